package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/** Shelves as they are loaded. */
class ShelvesTest {
  private static final double GAP = 6;

  @Test
  void packsOvalsAtEightyFivePerCent() {
    BodyKind oval = BodyKind.upright("oval", Oval.of(100, 50), 10);
    double radius = Math.sqrt(24 * 100 * 50 / 0.855);
    assertPacked(Questions.touching(Region.disc(radius), List.of(oval), 24));
  }

  @Test
  void interlocksHandlesForAQuarterMoreThanByEnclosingCircles() {
    BodyKind circle = BodyKind.round("enclosing circle", (85 + 35) / 2.0, 95);
    int circles = 0;
    while (fits(question(circle, circles + 1))) {
      circles++;
    }
    int wanted = (int) Math.ceil(1.25 * circles);
    assertThat(circles).isGreaterThanOrEqualTo(8);
    assertPacked(question(Questions.cup(), wanted));
  }

  private static ShelfQuestion question(BodyKind kind, int count) {
    return ShelfQuestion.of(Questions.shelfOnThreePosts(), List.of(kind), new int[] {count}, GAP);
  }

  private static boolean fits(ShelfQuestion question) {
    return new ShelfPacker().pack(question, Effort.NORMAL, 1) instanceof Packed;
  }

  @Test
  void holdsATwentiethMoreThanLargestFirstTangentPlacement() {
    ShelfSpace posts = Questions.shelfOnThreePosts();
    List<Obstacle> obstacles = new ArrayList<>(posts.obstacles());
    obstacles.add(new Obstacle(Oval.of(45, 15), 0, 80, 10));
    ShelfSpace shelf = new ShelfSpace(posts.rooms(), obstacles);
    List<BodyKind> kinds =
        List.of(
            Questions.dish(),
            Questions.cup(),
            BodyKind.round("tumbler", 38, 95),
            BodyKind.round("small", 26, 50));
    ShelfQuestion wish = ShelfQuestion.of(shelf, kinds, new int[] {3, 5, 4, 40}, GAP);
    int[] greedy = new TangentPlacement(wish).counts();
    assertThat(Arrays.copyOf(greedy, 3)).containsExactly(3, 5, 4);
    int[] more = greedy.clone();
    more[3] += (int) Math.ceil(0.05 * Arrays.stream(greedy).sum());
    assertPacked(ShelfQuestion.of(shelf, kinds, more, GAP));
  }

  @Test
  void standsCupsUnderABowlsFlare() {
    Disc foot = Disc.of(45);
    Disc rim = Disc.of(110);
    BodyKind bowl =
        new BodyKind(
            "bowl", List.of(new Part(foot, 0, 80), new Part(rim, 80, 110)), foot, false, 0);
    BodyKind low = BodyKind.round("low cup", 40, 70);
    BodyKind tall = BodyKind.round("tall cup", 40, 90);
    // At the rim a ring of 50 mm is left beside a centred bowl, too little for five cups of 80.
    Region shelf = Region.disc(160);
    assertPacked(Questions.touching(shelf, List.of(bowl, low), 1, 5));
    ShelfAnswer answer =
        new ShelfPacker()
            .pack(Questions.touching(shelf, List.of(bowl, tall), 1, 5), Effort.NORMAL, 1);
    assertThat(answer).isInstanceOf(DoesNotFit.class);
  }

  @Test
  void letsABellyPassTheShelfsEdgeWhenOnlyFeetAreHeld() {
    Disc foot = Disc.of(30);
    BodyKind vase =
        new BodyKind(
            "vase", List.of(new Part(foot, 0, 20), new Part(Disc.of(60), 20, 100)), foot, false, 1);
    Room shelf = new Room(Region.disc(100), 5, Applies.FOOT);
    Room wall = new Room(Region.disc(140), 5, Applies.BODY);
    ShelfSpace space = new ShelfSpace(List.of(shelf, wall), List.of());
    ShelfQuestion two = ShelfQuestion.of(space, List.of(vase), new int[] {2}, 3);
    assertPacked(two);
    Room held = new Room(Region.disc(100), 5, Applies.BODY);
    ShelfQuestion none =
        ShelfQuestion.of(
            new ShelfSpace(List.of(held, wall), List.of()), List.of(vase), new int[] {2}, 3);
    assertThat(new ShelfPacker().pack(none, Effort.QUICK, 1)).isInstanceOf(DoesNotFit.class);
  }

  @Test
  void takesRoomFromEveryObstacleAtItsHeightsOnly() {
    Obstacle beam = new Obstacle(new Oval(0, 0, 95, 20, 0), 60, 90, 10);
    ShelfSpace space =
        new ShelfSpace(List.of(new Room(Region.disc(100), 0, Applies.BODY)), List.of(beam));
    ShelfQuestion low =
        ShelfQuestion.of(space, List.of(BodyKind.round("dish", 60, 60)), new int[] {1}, 0);
    ShelfQuestion tall =
        ShelfQuestion.of(space, List.of(BodyKind.round("jar", 60, 61)), new int[] {1}, 0);
    assertPacked(low);
    assertThat(new ShelfPacker().pack(tall, Effort.NORMAL, 1)).isInstanceOf(DoesNotFit.class);
  }

  private static void assertPacked(ShelfQuestion question) {
    ShelfAnswer answer = new ShelfPacker().pack(question, Effort.THOROUGH, 1);
    assertThat(answer).isInstanceOf(Packed.class);
    Judge.accepts(question, (Packed) answer);
  }
}
