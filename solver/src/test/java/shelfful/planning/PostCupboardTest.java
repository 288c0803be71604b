package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.kiln.Post;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;

class PostCupboardTest {
  private static PostCupboard cupboard(int mostPieces, Post... posts) {
    HouseRules scene = new Scene().request().studio().rules();
    HouseRules rules =
        new HouseRules(
            scene.clearances(), true, mostPieces, scene.catcher(), List.of(), scene.dueSoonDays());
    return new PostCupboard(
        new Studio(
            "Posts",
            LengthUnit.MILLIMETRES,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(posts),
            rules));
  }

  private static Post post(String id, double length, double across, int count) {
    return new Post(id, Length.ofMillimetres(length), Length.ofMillimetres(across), count);
  }

  private static List<Long> heights(PostCupboard cupboard) {
    return cupboard.lengths().stream().map(PostLength::height).toList();
  }

  @Test
  void singlePostsMakeTheirOwnLengths() {
    assertThat(heights(cupboard(1, post("b", 60, 30, 1), post("a", 40, 30, 9))))
        .containsExactly(40_000L, 60_000L);
  }

  @Test
  void twoPiecesMakeEverySum() {
    assertThat(heights(cupboard(2, post("a", 40, 30, 2), post("b", 60, 30, 2))))
        .containsExactly(40_000L, 60_000L, 80_000L, 100_000L, 120_000L);
  }

  @Test
  void onePostCannotBeStackedOnItself() {
    assertThat(heights(cupboard(2, post("a", 40, 30, 1)))).containsExactly(40_000L);
  }

  @Test
  void sectionsAreNotMixed() {
    assertThat(heights(cupboard(2, post("a", 40, 30, 1), post("b", 60, 38, 1))))
        .containsExactly(40_000L, 60_000L);
  }

  @Test
  void whatIsNotThereMakesNothing() {
    assertThat(heights(cupboard(2, post("a", 40, 30, 0), post("b", 60, 30, 1))))
        .containsExactly(60_000L);
  }

  @Test
  void theLongerPieceStandsBelow() {
    int[] making =
        cupboard(2, post("a", 40, 30, 1), post("b", 60, 30, 1)).lengths().get(2).makings().get(0);
    assertThat(making).containsExactly(1, 0);
  }

  @Test
  void oneHeightMayBeMadeInSeveralWaysSinglePostsFirst() {
    PostCupboard cupboard =
        cupboard(
            2,
            post("a", 40, 30, 4),
            post("b", 80, 30, 4),
            post("c", 60, 30, 4),
            post("d", 20, 30, 4));
    PostLength eighty =
        cupboard.lengths().stream().filter(l -> l.height() == 80_000).findFirst().orElseThrow();
    assertThat(eighty.makings()).hasSize(3);
    assertThat(eighty.makings().get(0)).containsExactly(1);
  }

  @Test
  void theWidestSectionIsKnown() {
    assertThat(cupboard(1, post("a", 40, 30, 1), post("b", 60, 38, 0)).widest()).isEqualTo(38);
    assertThat(cupboard(1).widest()).isZero();
    assertThat(Optional.of(cupboard(1, post("a", 40, 30, 3)).stock()[0])).hasValue(3);
  }
}
