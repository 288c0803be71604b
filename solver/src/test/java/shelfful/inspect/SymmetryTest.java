package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Loads;
import shelfful.inspect.fault.FaultInjector;
import shelfful.inspect.fault.FaultKind;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.StandingPost;

/** The judgement does not depend on the order of things nor on which way round the kiln stands. */
class SymmetryTest {
  @TestFactory
  Stream<DynamicTest> judgesTheSame() {
    Map<String, UnaryOperator<Load>> changes =
        Map.of(
            "in reverse order", SymmetryTest::reversed,
            "turned by half a turn", TurnedLoad::of,
            "seen in a mirror", MirroredLoad::of);
    return Loads.all().entrySet().stream()
        .filter(fixture -> !fixture.getKey().contains("five hundred"))
        .flatMap(
            fixture ->
                changes.entrySet().stream()
                    .map(
                        change ->
                            DynamicTest.dynamicTest(
                                fixture.getKey() + " " + change.getKey(),
                                () -> assertSame(fixture.getValue().get(), change.getValue()))));
  }

  private static void assertSame(Load valid, UnaryOperator<Load> change) {
    assertThat(measured(change.apply(valid))).isEqualTo(measured(valid));
    List<FaultKind> kinds = new ArrayList<>(Arrays.asList(FaultKind.values()));
    kinds.remove(FaultKind.LAYER_ID_TWICE);
    for (FaultKind kind : kinds) {
      Optional<Load> spoiled = new FaultInjector().plant(kind, valid, 5);
      spoiled.ifPresent(
          load -> assertThat(counted(change.apply(load))).as(kind.name()).isEqualTo(counted(load)));
    }
  }

  private static Map<String, LayerFigures> measured(Load load) {
    return ((Inspection.Passed) new Inspector().inspect(load))
        .load().figures().stream()
            .collect(Collectors.toMap(LayerFigures::layerId, Function.identity()));
  }

  private static Map<String, Long> counted(Load load) {
    return Limits.findings(load).stream()
        .collect(Collectors.groupingBy(Finding::rule, Collectors.counting()));
  }

  private static Load reversed(Load load) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : load.layers()) {
      layers.add(0, layer.holding(reversed(layer.placements())));
    }
    List<StandingPost> posts = reversed(load.posts());
    return new Load(load.request(), load.columnPlanId(), layers, posts, reversed(load.leftOut()));
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> reversed = new ArrayList<>(list);
    Collections.reverse(reversed);
    return reversed;
  }
}
