package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.kiln.Loading;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;

/**
 * No piece is set after one that stands between its place and the loader's hand.
 *
 * <p>The rule: into a front-loader a hand carries a pot level from the front edge, so no body that
 * stands already may lie in the straight lane to its place at a height both have. Into a top-loader
 * a hand lowers a pot, so nothing that stands already may lie over any of it; and as the arm leans
 * in over the front wall, no body may stand in the lane either, unless some piece of the layer must
 * go in before one that is farther away because that one reaches over it.
 *
 * <p>Two pieces of which each is in the other's way (interlocked handles under rims) cannot be set
 * straight in any order; they are left out. Judged with JTS, apart from the program's own geometry.
 */
class HandReachTest {
  private static final int RANDOM_PLANS = 200;

  static Stream<String> demoPlans() {
    return DemoPlans.NAMES.stream();
  }

  static LongStream seeds() {
    return LongStream.range(0, RANDOM_PLANS);
  }

  @ParameterizedTest
  @MethodSource("demoPlans")
  void noPieceOfADemoPlanIsSetPastOneInItsWay(String name) {
    assertThat(blocked(DemoPlans.of(name))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noPieceOfARandomPlanIsSetPastOneInItsWay(long seed) {
    Load load = new LoadPlanner(RandomRequest.of(seed)).plan(SearchBudget.ofSteps(0), shown -> {});
    Inspection.Passed passed = (Inspection.Passed) new Inspector().inspect(load);
    assertThat(blocked(passed.load())).isEmpty();
  }

  private static List<String> blocked(InspectedLoad load) {
    Setting setting = new Setting(load);
    List<String> blocked = new ArrayList<>();
    for (Layer layer : setting.layers()) {
      blocked.addAll(blocked(setting.on(layer), setting.kiln().loading()));
    }
    return blocked;
  }

  private static List<String> blocked(List<SetPiece> pieces, Loading loading) {
    List<List<FromAbove>> bodies = pieces.stream().map(FromAbove::bodies).toList();
    List<List<FromAbove>> parts = pieces.stream().map(FromAbove::all).toList();
    List<String> over = new ArrayList<>();
    List<String> inLane = new ArrayList<>();
    boolean anyOver = false;
    for (int later = 0; later < pieces.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        String pair = pieces.get(earlier).number() + " before " + pieces.get(later).number();
        if (FromAbove.any(bodies.get(earlier), bodies.get(later), FromAbove::isInLaneOf)) {
          inLane.add(pair + " in its lane");
        }
        boolean lies = FromAbove.any(parts.get(earlier), parts.get(later), FromAbove::isOver);
        boolean lain = FromAbove.any(parts.get(later), parts.get(earlier), FromAbove::isOver);
        anyOver |= lies || lain;
        if (lies && !lain) {
          over.add(pair + " over it");
        }
      }
    }
    if (loading == Loading.FRONT) {
      return inLane;
    }
    return anyOver ? over : Stream.concat(over.stream(), inLane.stream()).toList();
  }
}
