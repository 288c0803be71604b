package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shelfful.edit.Difference;
import shelfful.edit.WorkPlan;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;

class FillUpTest {
  private static Load load() {
    return new LoadDraft(
            Studios.studio(),
            Firings.glaze("round"),
            "full",
            Batches.glazed("BK", "beaker", "chalk", 5),
            Batches.glazed("VS", "vase", "chalk", 1))
        .level("F", "1in")
        .level("F", "4in")
        .place("F1", "BK-001", -60, 0, 0)
        .load();
  }

  private static InspectedLoad filled(WorkPlan plan) {
    return new FillUp(plan).run(SearchLength.ofSteps(0), PlanListener.none()).orElseThrow();
  }

  @Test
  void putsInWhatFindsAFreePlaceAndMovesNothing() {
    WorkPlan plan = WorkPlan.of(load());
    WorkPlan filled = WorkPlan.of(filled(plan).load());
    Difference than = Difference.between(plan, filled);
    assertThat(than.moved()).isZero();
    assertThat(than.takenOut()).isZero();
    assertThat(Stream.of(2, 3, 4, 5).map(n -> "BK-00" + n))
        .allMatch(id -> filled.placement(id).isPresent());
    assertThat(PlanAround.keeps(plan, filled.load())).isTrue();
  }

  @Test
  void leavesLockedLayersAsTheyAre() {
    WorkPlan plan =
        new WorkPlan(load(), new TreeSet<>(List.of("BK-001")), new TreeSet<>(List.of("F1", "F2")));
    assertThat(filled(plan).load()).isEqualTo(plan.load());
  }

  @Test
  void stopsWhenItIsTold() {
    FillUp fillUp = new FillUp(WorkPlan.of(load()));
    fillUp.stop();
    assertThat(fillUp.run(SearchLength.ofSteps(0), PlanListener.none()).orElseThrow().load())
        .isEqualTo(load());
  }

  @Test
  void aPlanWithAPinMovedIsNotKept() {
    WorkPlan plan = new WorkPlan(load(), new TreeSet<>(List.of("BK-001")), new TreeSet<>());
    Load elsewhere =
        new LoadDraft(
                Studios.studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("BK", "beaker", "chalk", 5),
                Batches.glazed("VS", "vase", "chalk", 1))
            .level("F", "1in")
            .level("F", "4in")
            .place("F1", "BK-001", -60, 0.001, 0)
            .load();
    assertThat(PlanAround.keeps(plan, load())).isTrue();
    assertThat(PlanAround.keeps(plan, elsewhere)).isFalse();
  }
}
