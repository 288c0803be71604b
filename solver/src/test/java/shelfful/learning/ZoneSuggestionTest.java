package shelfful.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Studios;
import shelfful.studio.Studio;
import shelfful.ware.Zone;

class ZoneSuggestionTest {
  private static CellRate worse(String cell) {
    Proportion here = new Proportion(30, 100);
    return new CellRate(
        Trait.GLAZE_AT_HEIGHT,
        cell,
        here,
        here.wilson(0.95),
        new Proportion(10, 200),
        Verdict.WORSE,
        0.001);
  }

  @Test
  void becomesAWishOnlyWhenAccepted() {
    Studio studio = Studios.studio();
    ZoneSuggestion suggestion =
        ZoneSuggestion.from(List.of(worse("chalk, top")), Flaw.SECOND_OR_LOST).get(0);

    assertThat(suggestion.sentence()).contains("30 of 100").contains("30 %");
    assertThat(studio.glaze("chalk").orElseThrow().likes()).isEmpty();
    Studio accepted = suggestion.accepted(studio);
    assertThat(accepted.glaze("chalk").orElseThrow().likes())
        .containsExactlyInAnyOrder(Zone.BOTTOM, Zone.MIDDLE);
    assertThat(accepted.glaze("moss")).isEqualTo(studio.glaze("moss"));
  }

  @Test
  void leavesTheLastLikedZone() {
    Studio studio = Studios.studio();
    Studio accepted =
        ZoneSuggestion.from(List.of(worse("moss, middle")), Flaw.SECOND_OR_LOST)
            .get(0)
            .accepted(studio);
    assertThat(accepted.glaze("moss")).isEqualTo(studio.glaze("moss"));
  }

  @Test
  void suggestsNothingOfWareWithoutAGlazeButOfAGlazeOfThatName() {
    List<CellRate> rates =
        List.of(worse(Trait.NO_GLAZE + ", top"), worse("no glaze, middle"), worse("chalk, top"));
    assertThat(ZoneSuggestion.from(rates, Flaw.LOST))
        .extracting(ZoneSuggestion::glazeId)
        .containsExactly("no glaze", "chalk");
  }

  @Test
  void saysWhatWasCounted() {
    assertThat(ZoneSuggestion.from(List.of(worse("chalk, top")), Flaw.LOST).get(0).sentence())
        .contains("30 of 100 lost");
  }

  @Test
  void suggestsNothingOfWhatIsLikeTheRest() {
    CellRate rate = worse("chalk, top");
    CellRate like =
        new CellRate(
            rate.trait(),
            rate.cell(),
            rate.proportion(),
            rate.interval(),
            rate.rest(),
            Verdict.LIKE_THE_REST,
            0.4);
    assertThat(ZoneSuggestion.from(List.of(like), Flaw.SECOND_OR_LOST)).isEmpty();
  }
}
