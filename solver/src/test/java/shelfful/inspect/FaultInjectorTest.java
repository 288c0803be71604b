package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Loads;
import shelfful.inspect.fault.FaultInjector;
import shelfful.inspect.fault.FaultKind;
import shelfful.load.Load;

class FaultInjectorTest {
  private static final int SEEDS = 5;
  private static final Map<String, Load> LOADS = loads();

  @TestFactory
  Stream<DynamicTest> findsEveryPlantedFault() {
    return Arrays.stream(FaultKind.values())
        .map(kind -> DynamicTest.dynamicTest(kind.name(), () -> assertFound(kind)));
  }

  private static Map<String, Load> loads() {
    Map<String, Load> loads = new LinkedHashMap<>();
    Loads.all().forEach((name, load) -> loads.put(name, load.get()));
    return loads;
  }

  /** The full number: more than ten thousand faults, none may be missed. */
  @Test
  @Tag("slow")
  void findsTenThousandPlantedFaults() {
    int planted = 0;
    for (FaultKind kind : FaultKind.values()) {
      planted += found(kind, 30);
    }
    assertThat(planted).isGreaterThan(10_000);
  }

  /** Without this a rule could be dropped from the judge and no test would see it. */
  @Test
  void hasAFaultForEveryRuleThatMayNotBeBroken() {
    Set<Rule> broken =
        Arrays.stream(FaultKind.values()).map(FaultKind::rule).collect(Collectors.toSet());
    broken.add(Rule.FIGURE_BEYOND_REASON);
    assertThat(Rule.values())
        .filteredOn(rule -> rule.severity() == Finding.Severity.BREAKS)
        .allMatch(broken::contains);
  }

  private static void assertFound(FaultKind kind) {
    assertThat(found(kind, SEEDS)).as("loads the fault could be planted in").isPositive();
  }

  private static int found(FaultKind kind, int seeds) {
    int planted = 0;
    for (var fixture : LOADS.entrySet()) {
      Load valid = fixture.getValue();
      for (long seed = 1; seed <= seeds; seed++) {
        Optional<Load> spoiled = new FaultInjector().plant(kind, valid, seed);
        if (spoiled.isPresent()) {
          planted++;
          assertBreaks(kind, spoiled.get(), fixture.getKey() + ", seed " + seed);
        }
      }
    }
    return planted;
  }

  private static void assertBreaks(FaultKind kind, Load spoiled, String where) {
    Inspection inspection = new Inspector().inspect(spoiled);
    assertThat(inspection).as(where).isInstanceOf(Inspection.Failed.class);
    assertThat(((Inspection.Failed) inspection).findings())
        .as(where)
        .extracting(Finding::rule)
        .contains(kind.rule().id());
  }
}
