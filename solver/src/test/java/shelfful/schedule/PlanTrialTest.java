package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.load.Load;
import shelfful.schedule.LoadAnswer.PlacedUnit;
import shelfful.ware.Stage;

class PlanTrialTest {
  private final GlazeFirings week =
      new GlazeFirings(
          Weeks.ware("A", "basin", 6, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"));
  private final Chunk one = week.chunk("A", 0, 1);
  private final UnitKind basin = one.lot().glaze().orElseThrow();
  private final UnitKind drum = week.chunk("B", 0, 1).lot().glaze().orElseThrow();

  /** Which load it is does not matter here but for its column plan, which is "full". */
  private final Load load = week.firing(0, one).load().orElseThrow();

  private LoadAnswer answer(int basins, int drums, UnitKind... refused) {
    PlacedUnit any = new PlacedUnit(List.of());
    return new LoadAnswer(
        load,
        Map.of(
            basin, Collections.nCopies(basins, any),
            drum, Collections.nCopies(drums, any)),
        Set.of(refused),
        false);
  }

  private static LoadAnswer best(List<Asked> asked, LoadAnswer... answers) {
    return new PlanTrial(asked, List.of(answers)).best().orElseThrow();
  }

  @Test
  void whatMustGoInComesBeforeAllWorth() {
    List<Asked> asked = List.of(new Asked(basin, 1, 0, 0, 1), new Asked(drum, 0, 0, 9, 50));

    assertThat(best(asked, answer(0, 9), answer(1, 1)).count(basin)).isEqualTo(1);
  }

  @Test
  void ofAsManyThatMustTheOneWorthMostIsBest() {
    List<Asked> asked = List.of(new Asked(basin, 1, 0, 5, 10), new Asked(drum, 0, 0, 5, 25));

    assertThat(best(asked, answer(3, 1), answer(1, 2)).count(drum))
        .as("30 and 25 against 10 and 50")
        .isEqualTo(2);
  }

  @Test
  void whatWasMeantForItCountsTwice() {
    List<Asked> asked = List.of(new Asked(basin, 0, 2, 5, 10), new Asked(drum, 0, 0, 5, 25));

    assertThat(best(asked, answer(0, 1), answer(2, 0)).count(basin)).isEqualTo(2);
    assertThat(best(asked, answer(1, 0), answer(0, 1)).count(drum)).isEqualTo(1);
  }

  @Test
  void theFirstOfTwoAsGoodIsTaken() {
    List<Asked> asked = List.of(new Asked(basin, 0, 0, 5, 10), new Asked(drum, 0, 0, 5, 10));

    assertThat(best(asked, answer(2, 0), answer(0, 2)).count(basin)).isEqualTo(2);
  }

  @Test
  void onlyWhatEveryPlanRefusesIsRefused() {
    List<Asked> asked = List.of(new Asked(basin, 0, 0, 5, 10), new Asked(drum, 0, 0, 5, 10));

    LoadAnswer best = best(asked, answer(2, 0, drum, basin), answer(0, 1, basin));

    assertThat(best.refused()).containsExactly(basin);
    assertThat(best.leftForRoom()).as("a drum stands in the other plan").isTrue();
    assertThat(best(asked, answer(2, 0, drum), answer(1, 0, drum)).leftForRoom()).isFalse();
  }

  @Test
  void sharesAreOfTheMost() {
    List<Asked> asked = List.of(new Asked(basin, 0, 0, 5, 10), new Asked(drum, 0, 0, 5, 10));

    assertThat(new PlanTrial(asked, List.of(answer(2, 1))).shares()).isEqualTo(Map.of("full", 1.0));
    assertThat(new PlanTrial(asked, List.of(answer(0, 0))).shares()).isEqualTo(Map.of("full", 0.0));
  }
}
