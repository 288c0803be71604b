package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Batch;
import shelfful.ware.BatchChange;
import shelfful.ware.FiringKind;

/** Several loads that share their ware, and hold more of it once what is left was tucked in. */
class LoadsTogetherTest {
  private static final int EFFORT = 4_000;
  private static final int CASES = 60;

  static LongStream glazeRequests() {
    return LongStream.range(0, CASES)
        .filter(seed -> RandomRequest.of(seed).firing().kind() == FiringKind.GLAZE);
  }

  /** Pieces of each batch on the list. */
  private static Map<String, Integer> counts(LoadRequest request) {
    Map<String, Integer> counts = new HashMap<>();
    request.pieces().forEach(piece -> counts.merge(piece.batch().id(), 1, Integer::sum));
    return counts;
  }

  /** Pieces of each batch that stand in a load. */
  private static Map<String, Integer> standing(Load load) {
    Map<String, Integer> counts = new HashMap<>();
    load.request().pieces().stream()
        .filter(piece -> load.standing().contains(piece.id()))
        .forEach(piece -> counts.merge(piece.batch().id(), 1, Integer::sum));
    return counts;
  }

  private static Map<String, Integer> standing(List<Load> loads) {
    Map<String, Integer> counts = new HashMap<>();
    loads.forEach(
        load -> standing(load).forEach((id, count) -> counts.merge(id, count, Integer::sum)));
    return counts;
  }

  /** What loads are worth, where nothing is due. */
  private static long worth(List<Load> loads) {
    long worth = 0;
    for (Load load : loads) {
      for (Batch batch : load.request().batches()) {
        worth += (long) standing(load).getOrDefault(batch.id(), 0) * batch.priority();
      }
    }
    return worth;
  }

  private static LoadRequest with(LoadRequest request, List<Batch> batches) {
    return new LoadRequest(
        request.studio(),
        batches,
        request.firing(),
        request.columnPlanId(),
        Optional.empty(),
        request.seed(),
        0);
  }

  /** The same list less what stands in a load; a batch may run out. */
  private static LoadRequest less(LoadRequest request, Load load) {
    Map<String, Integer> gone = standing(load);
    List<Batch> left = new ArrayList<>();
    for (Batch batch : request.batches()) {
      long each =
          request.pieces().stream().filter(piece -> piece.batch().id().equals(batch.id())).count()
              / Math.max(1, batch.quantity());
      int quantity =
          batch.quantity() - (int) (gone.getOrDefault(batch.id(), 0) / Math.max(1, each));
      if (quantity > 0) {
        left.add(BatchChange.pieces(batch, quantity, batch.stage()));
      }
    }
    return with(request, left);
  }

  private static Load planned(LoadRequest request) {
    return new LoadPlanner(request).plan(SearchBudget.ofSteps(1), better -> {});
  }

  /** A load as one of another list on which all its ware is. */
  private static Load on(LoadRequest list, Load load) {
    return new Load(list, load.columnPlanId(), load.layers(), load.posts(), List.of());
  }

  private static Optional<List<Load>> better(Load... loads) {
    ShelfBook book = new ShelfBook(loads[0].request().studio());
    return new LoadsTogether(book, () -> false).better(List.of(loads), EFFORT, 3);
  }

  private static void keepTheRules(List<Load> loads) {
    for (Load load : loads) {
      assertThat(LoadAccount.wrong(load)).isEmpty();
      assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    }
  }

  @ParameterizedTest(name = "request {0}")
  @MethodSource("glazeRequests")
  void holdMoreAndNoPieceTwice(long seed) {
    LoadRequest request = with(RandomRequest.of(seed), RandomRequest.of(seed).batches());
    Load first = planned(request);
    Load second = planned(less(request, first));
    List<Load> before = List.of(on(request, first), on(request, second));

    Optional<List<Load>> after = better(before.get(0), before.get(1));

    if (after.isPresent()) {
      keepTheRules(after.get());
      assertThat(worth(after.get())).isGreaterThan(worth(before));
      Map<String, Integer> there = counts(request);
      standing(after.get())
          .forEach((id, count) -> assertThat(count).as(id).isLessThanOrEqualTo(there.get(id)));
    }
  }

  /** Of 33 eight do; in many lists all that waits is of another cone or stage. */
  @Test
  void someLoadsThatWereHardlySearchedHoldMore() {
    long better = 0;
    long all = 0;
    for (long seed : glazeRequests().toArray()) {
      LoadRequest request = with(RandomRequest.of(seed), RandomRequest.of(seed).batches());
      Load first = planned(request);
      boolean someLeft = first.placed() > 0 && !less(request, first).batches().isEmpty();
      all += someLeft ? 1 : 0;
      better += someLeft && better(on(request, first)).isPresent() ? 1 : 0;
    }
    assertThat(all).isGreaterThan(10);
    assertThat(better).as("of " + all).isGreaterThanOrEqualTo(4);
  }

  /** Loads with a level that has nothing on one of its shelves, and more of everything to take. */
  @ParameterizedTest(name = "request {0}")
  @ValueSource(longs = {6, 36, 56, 166})
  void aLevelMayHaveAnEmptyShelf(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    Load load = planned(request);
    List<Batch> more =
        request.batches().stream()
            .map(batch -> BatchChange.pieces(batch, batch.quantity() + 5, batch.stage()))
            .toList();

    Optional<List<Load>> found = better(on(with(request, more), load));

    found.ifPresent(LoadsTogetherTest::keepTheRules);
    assertThat(found.map(LoadsTogetherTest::worth).orElse(worth(List.of(load))))
        .isGreaterThanOrEqualTo(worth(List.of(load)));
  }

  @Test
  void whatThereIsRoomForGoesIn() {
    Scene scene = new Scene().shelves(1).cup("a", 60, 70);
    LoadRequest all = scene.batch("A", "a", 5).request();
    Load two = planned(with(all, List.of(Scene.plain("A", "a", 2))));

    List<Load> found = better(on(all, two)).orElseThrow();

    assertThat(standing(found)).isEqualTo(Map.of("A", 5));
    keepTheRules(found);
  }

  /** A full shelf of plates, and one that may go nowhere else; the other load has room. */
  @Test
  void onePieceMakesWayForAnotherAndGoesElsewhere() {
    LoadRequest many =
        new Scene().shelves(1).cup("plate", 150, 30).batch("P", "plate", 20).request();
    Load full = planned(many);
    int fit = full.placed();
    LoadRequest early = with(many, List.of(Scene.plain("P", "plate", fit + 1)));
    LoadRequest late =
        with(many, List.of(Scene.plain("P", "plate", fit + 1), Scene.plain("L", "plate", 1)));
    Load one = planned(with(many, List.of(Scene.plain("P", "plate", 1))));

    List<Load> found = better(on(early, one), on(late, full)).orElseThrow();

    assertThat(standing(found.get(0))).isEqualTo(Map.of("P", 2));
    assertThat(standing(found.get(1))).isEqualTo(Map.of("P", fit - 1, "L", 1));
    keepTheRules(found);
  }

  @Test
  void saysNothingWhereNothingIsLeft() {
    LoadRequest all = new Scene().cup("a", 60, 70).batch("A", "a", 5).request();
    assertThat(better(planned(all))).isEmpty();
  }

  @Test
  void aLoadThatWouldNotStandIsLeftAsItIs() {
    LoadRequest wide = new Scene().cup("a", 200, 70).batch("A", "a", 20).request();
    LoadRequest flat =
        new Scene().chamber(500, 100).cup("a", 200, 70).batch("A", "a", 20).request();
    assertThat(better(on(flat, planned(wide)))).isEmpty();
  }
}
