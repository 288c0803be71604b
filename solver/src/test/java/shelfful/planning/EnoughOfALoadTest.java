package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.sample.SampleLoads;

/**
 * A search that is told that it is enough, other than one that is stopped, still spaces its load.
 */
class EnoughOfALoadTest {

  @Test
  void endedWhenEverythingStandsTheLoadIsStillSpaced() {
    LoadRequest request =
        SampleLoads.all().stream()
            .filter(sample -> sample.name().equals("everything-fits-30"))
            .findFirst()
            .orElseThrow()
            .request(1);
    List<Load> told = new ArrayList<>();
    LoadPlanner planner = new LoadPlanner(request);

    Load ended =
        planner.plan(
            SearchBudget.ofSteps(1_000_000_000L),
            load -> {
              told.add(load);
              if (load.leftOut().isEmpty()) {
                planner.enough();
              }
            });

    assertThat(ended.leftOut()).isEmpty();
    assertThat(ended).isNotEqualTo(told.get(told.size() - 1));
    assertThat(new Inspector().inspect(ended)).isInstanceOf(Inspection.Passed.class);
  }
}
