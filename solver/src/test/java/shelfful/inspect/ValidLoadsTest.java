package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Loads;
import shelfful.load.Load;

class ValidLoadsTest {
  @TestFactory
  Stream<DynamicTest> passesLoadsThatBreakNoRule() {
    return Loads.all().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> assertPasses(entry.getValue().get())));
  }

  private static void assertPasses(Load load) {
    assertThat(load.placed()).isPositive();
    Inspection inspection = new Inspector().inspect(load);
    List<Finding> findings =
        inspection instanceof Inspection.Failed failed ? failed.findings() : List.of();
    assertThat(findings).isEmpty();
    assertThat(inspection).isInstanceOf(Inspection.Passed.class);
  }
}
