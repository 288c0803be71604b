package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.inspect.fault.FaultInjector;
import shelfful.inspect.fault.FaultKind;
import shelfful.load.Load;

/**
 * The judge is judged: single faults planted into loads that the planner made must all be found,
 * and the untouched loads must not be blamed. An ordinary build plants a few dozen; a thousand are
 * planted into a thousand loads by
 *
 * <pre>
 * mvn -pl solver test -DskippedTags= -Dtest=FaultsInPlannedLoadsTest#aThousandFaultsInAThousandLoads
 * </pre>
 */
class FaultsInPlannedLoadsTest {
  private final Inspector inspector = new Inspector();
  private final FaultInjector injector = new FaultInjector();
  private final List<String> complaints = new ArrayList<>();
  private final Set<FaultKind> planted = EnumSet.noneOf(FaultKind.class);
  private int faults;

  @Test
  void aFewDozenFaults() {
    plantInto(25);

    assertThat(complaints).isEmpty();
    assertThat(faults).isGreaterThan(20);
  }

  @Test
  @Tag("slow")
  void aThousandFaultsInAThousandLoads() {
    plantInto(1000);

    assertThat(complaints).isEmpty();
    assertThat(faults).isGreaterThanOrEqualTo(1000);
    assertThat(planted).hasSizeGreaterThanOrEqualTo(20);
  }

  private void plantInto(int loads) {
    for (long seed = 0; seed < loads; seed++) {
      Load load = new LoadPlanner(RandomRequest.of(seed)).plan(SearchBudget.ofSteps(1), l -> {});
      if (inspector.inspect(load) instanceof Inspection.Failed failed) {
        complaints.add("seed " + seed + " blamed: " + failed.findings());
      } else {
        plantInto(load, seed);
      }
    }
  }

  /**
   * Two kinds for each load, one after the other through the list of kinds, as far as they can be
   * planted.
   */
  private void plantInto(Load load, long seed) {
    FaultKind[] kinds = FaultKind.values();
    int wanted = 2;
    for (int i = 0; i < kinds.length && wanted > 0; i++) {
      FaultKind kind = kinds[(int) ((2 * seed + i) % kinds.length)];
      Optional<Load> faulty = injector.plant(kind, load, seed);
      if (faulty.isPresent()) {
        wanted--;
        faults++;
        planted.add(kind);
        if (inspector.inspect(faulty.get()) instanceof Inspection.Passed) {
          complaints.add("seed " + seed + ": missed " + kind);
        }
      }
    }
  }
}
