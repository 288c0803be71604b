package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.DynamicTest;
import shelfful.load.Load;

/**
 * Looks for one rule in scenes that keep to it by a number of millimetres, or break it when that is
 * below zero.
 */
final class Limits {
  private Limits() {}

  /**
   * A rule is kept with a millimetre to spare and at the very limit, and broken by a twentieth of a
   * millimetre.
   */
  static DynamicTest limit(String name, Rule rule, DoubleFunction<Load> scene) {
    return DynamicTest.dynamicTest(
        rule.id() + ": " + name,
        () -> {
          assertThat(rules(scene.apply(1))).as("1 mm to spare").doesNotContain(rule.id());
          assertThat(rules(scene.apply(0))).as("at the limit").doesNotContain(rule.id());
          assertThat(rules(scene.apply(-0.05))).as("broken by 0.05 mm").contains(rule.id());
        });
  }

  /** Every rule broken and every wish not met. */
  static List<String> rules(Load load) {
    return findings(load).stream().map(Finding::rule).toList();
  }

  static List<Finding> findings(Load load) {
    Inspection inspection = new Inspector().inspect(load);
    return inspection instanceof Inspection.Failed failed
        ? failed.findings()
        : ((Inspection.Passed) inspection).load().wishes();
  }
}
