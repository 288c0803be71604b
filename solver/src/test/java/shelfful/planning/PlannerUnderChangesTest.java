package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomRequest;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.kiln.Shelf;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** What must hold when a request is changed in a way whose effect is known. */
class PlannerUnderChangesTest {
  private static final long STEPS = 6;

  private static Load plan(LoadRequest request) {
    return new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), load -> {});
  }

  private static LoadRequest with(LoadRequest request, Studio studio, List<Batch> batches) {
    return new LoadRequest(
        studio,
        batches,
        request.firing(),
        request.columnPlanId(),
        request.day(),
        request.seed(),
        request.steps());
  }

  private static void isSound(Load load) {
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 18, 45, 59})
  void theOrderOfTheListDoesNotMatterForTheRules(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    for (long shuffle = 1; shuffle <= 2; shuffle++) {
      List<Batch> batches = new ArrayList<>(request.batches());
      Collections.shuffle(batches, new Random(shuffle));
      isSound(plan(with(request, request.studio(), batches)));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 18, 45, 59})
  void withoutShelvesEverythingWaitsAndIsToldWhy(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    Studio studio = request.studio();
    List<Shelf> none =
        studio.shelves().stream()
            .map(
                s ->
                    new Shelf(
                        s.id(),
                        s.name(),
                        s.outline(),
                        s.thickness(),
                        s.massLimit(),
                        s.hottest(),
                        0))
            .toList();
    Studio bare =
        new Studio(
            studio.name(),
            studio.unit(),
            studio.forms(),
            studio.glazes(),
            studio.kilns(),
            none,
            studio.posts(),
            studio.rules());
    Load load = plan(with(request, bare, request.batches()));
    isSound(load);
    assertThat(load.placed()).isZero();
    assertThat(load.leftOut()).hasSameSizeAs(request.pieces());
  }

  @Test
  void withoutPostsEverythingWaits() {
    Load load = new Scene().noPosts().cup("a", 90, 60).batch("A", "a", 9).plan(STEPS);
    isSound(load);
    assertThat(load.placed()).isZero();
    assertThat(load.leftOut()).hasSize(9);
  }

  /** Three times what the shelves can cover at most. */
  @Test
  void threeTimesTooMuchIsPlannedAllTheSame() {
    Scene scene = new Scene().cup("a", 90, 60).cup("b", 130, 100).batch("A", "a", 200);
    Load load = scene.batch("B", "b", 60).plan(STEPS);
    isSound(load);
    double shelf = Math.PI * 220 * 220;
    double most = 4 * shelf / (Math.PI * 45 * 45);
    assertThat(load.placed()).isBetween((int) (most / 3), (int) most);
    assertThat(load.leftOut()).hasSize(260 - load.placed());
  }

  @Test
  void anEmptyListIsAnEmptyKiln() {
    Load load = new Scene().cup("a", 90, 60).plan(STEPS);
    isSound(load);
    assertThat(load.layers()).isEmpty();
    assertThat(load.posts()).isEmpty();
    assertThat(load.leftOut()).isEmpty();
  }

  @Test
  void whatIsTiedToTheListMovesWithIt() {
    Load one = new Scene().cup("a", 90, 60).batch("A", "a", 40).plan(STEPS);
    Load two = new Scene().cup("a", 90, 60).batch("A", "a", 15).batch("B", "a", 25).plan(STEPS);
    // Equal ware in one batch or two is the same question.
    assertThat(two.placed()).isEqualTo(one.placed());
  }
}
