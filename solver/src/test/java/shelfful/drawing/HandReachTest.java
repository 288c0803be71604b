package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
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
 * <p>Two pieces of which each is in the other's way (interlocked handles under rims), and rings of
 * more that lie over each other in turn, cannot be set straight in any order; they are left out.
 * Judged with JTS, apart from the program's own geometry.
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
      List<SetPiece> inOrder =
          Stream.concat(Stream.of(layer), setting.setWith(layer).stream())
              .flatMap(one -> setting.on(one).stream())
              .sorted(Comparator.comparingInt(SetPiece::number))
              .toList();
      blocked.addAll(blocked(inOrder, setting.kiln().loading()));
      blocked.addAll(overAfter(setting, layer));
    }
    return blocked;
  }

  /** What of an earlier layer at the same height lies over something of a later one. */
  private static List<String> overAfter(Setting setting, Layer later) {
    List<String> over = new ArrayList<>();
    List<Layer> before = setting.layers().subList(0, setting.layers().indexOf(later));
    for (Layer earlier : before) {
      if (earlier.z().equals(later.z()) && !setting.setWith(later).contains(earlier)) {
        for (SetPiece stands : setting.on(earlier)) {
          for (SetPiece comes : setting.on(later)) {
            if (FromAbove.any(FromAbove.all(stands), FromAbove.all(comes), FromAbove::isOver)) {
              over.add(earlier.id() + " over " + later.id());
            }
          }
        }
      }
    }
    return over;
  }

  private static List<String> blocked(List<SetPiece> pieces, Loading loading) {
    List<List<FromAbove>> bodies = pieces.stream().map(FromAbove::bodies).toList();
    List<List<FromAbove>> parts = pieces.stream().map(FromAbove::all).toList();
    List<String> over = new ArrayList<>();
    List<String> inLane = new ArrayList<>();
    boolean anyOver = false;
    boolean[][] lies = liesOver(parts);
    boolean[][] chained = chained(lies);
    for (int later = 0; later < pieces.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        String pair = pieces.get(earlier).number() + " before " + pieces.get(later).number();
        if (FromAbove.any(bodies.get(earlier), bodies.get(later), FromAbove::isInLaneOf)) {
          inLane.add(pair + " in its lane");
        }
        anyOver |= lies[earlier][later] || lies[later][earlier];
        if (lies[earlier][later] && !chained[later][earlier]) {
          over.add(pair + " over it");
        }
      }
    }
    if (loading == Loading.FRONT) {
      return inLane;
    }
    return anyOver ? over : Stream.concat(over.stream(), inLane.stream()).toList();
  }

  private static boolean[][] liesOver(List<List<FromAbove>> parts) {
    boolean[][] lies = new boolean[parts.size()][parts.size()];
    for (int i = 0; i < lies.length; i++) {
      for (int j = 0; j < lies.length; j++) {
        lies[i][j] = i != j && FromAbove.any(parts.get(i), parts.get(j), FromAbove::isOver);
      }
    }
    return lies;
  }

  /** Whether one lies over another, or over one that does, and so on (Warshall 1962). */
  private static boolean[][] chained(boolean[][] lies) {
    boolean[][] chained = new boolean[lies.length][];
    for (int i = 0; i < lies.length; i++) {
      chained[i] = lies[i].clone();
    }
    for (int k = 0; k < lies.length; k++) {
      for (int i = 0; i < lies.length; i++) {
        for (int j = 0; j < lies.length; j++) {
          chained[i][j] |= chained[i][k] && chained[k][j];
        }
      }
    }
    return chained;
  }
}
