package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomRequest;
import shelfful.geometry.Pose;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.ShelfBook.Body;
import shelfful.planning.ShelfBook.Content;
import shelfful.planning.ShelfBook.Place;
import shelfful.ware.Batch;
import shelfful.ware.BatchChange;
import shelfful.ware.FiringKind;

/** Loads that begin with what others of the studio found out about shelves. */
class ShelfBookTest {
  private static final Place PLACE = new Place(FiringKind.GLAZE, "a shelf");

  private static Content content(int ware, int count) {
    List<Body> bodies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      bodies.add(new Body(ware, Pose.at(100.0 * i, 0)));
    }
    return new Content(Map.of(ware, count), bodies, 0);
  }

  /** The same ware in other numbers: every batch a share of it, some left out. */
  private static LoadRequest part(LoadRequest request, int turn) {
    List<Batch> batches = new ArrayList<>();
    for (int i = 0; i < request.batches().size(); i++) {
      Batch batch = request.batches().get(i);
      if ((i + turn) % 3 > 0 || request.batches().size() < 3) {
        int some = Math.max(1, batch.quantity() * (2 + turn % 3) / 4);
        batches.add(BatchChange.pieces(batch, some, batch.stage()));
      }
    }
    return new LoadRequest(
        request.studio(),
        batches,
        request.firing(),
        request.columnPlanId(),
        request.day(),
        request.seed() + turn,
        request.steps());
  }

  @ParameterizedTest(name = "request {0}")
  @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
  void loadsPlannedOneAfterTheOtherWithABookKeepTheRules(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    ShelfBook book = new ShelfBook(request.studio());
    for (int turn = 0; turn < 4; turn++) {
      LoadRequest asked = part(request, turn);
      Load load = new LoadPlanner(asked).with(book).plan(SearchBudget.ofSteps(3), better -> {});
      assertThat(LoadAccount.wrong(load)).isEmpty();
      assertThat(new Inspector().inspect(load))
          .as("request " + seed + ", turn " + turn)
          .isInstanceOf(Inspection.Passed.class);
    }
  }

  @Test
  void asksLessAndHoldsNoLessThanWithout() {
    LoadRequest request = Scene.ofThreeCups().request();
    ShelfBook book = new ShelfBook(request.studio());
    new LoadPlanner(request).with(book).plan(SearchBudget.ofSteps(40), better -> {});

    LoadPlanner without = new LoadPlanner(request);
    Load alone = without.plan(SearchBudget.ofSteps(6), better -> {});
    LoadPlanner with = new LoadPlanner(request).with(book);
    Load begun = with.plan(SearchBudget.ofSteps(6), better -> {});

    assertThat(with.work().asked()).isLessThan(without.work().asked());
    assertThat(begun.placed()).isGreaterThanOrEqualTo(alone.placed());
  }

  @Test
  void aBookOfAnotherStudioIsLeftAside() {
    LoadRequest request = Scene.ofThreeCups().request();
    ShelfBook other = new ShelfBook(new Scene().cup("a", 60, 70).request().studio());
    Load load = new LoadPlanner(request).with(other).plan(SearchBudget.ofSteps(5), better -> {});
    assertThat(load).isEqualTo(Scene.ofThreeCups().plan(5));
  }

  @Test
  void whatIsPartOfAnotherContentIsNotKept() {
    ShelfBook book = new ShelfBook(Scene.ofThreeCups().request().studio());
    book.fits(PLACE, List.of(content(1, 3), content(2, 2)));
    book.fits(PLACE, List.of(content(1, 2)));
    assertThat(book.contents(PLACE)).hasSize(2);
    book.fits(PLACE, List.of(content(1, 4)));
    assertThat(book.contents(PLACE))
        .extracting(Content::counts)
        .containsExactly(Map.of(2, 2), Map.of(1, 4));
    assertThat(book.contents(new Place(FiringKind.BISQUE, "a shelf"))).isEmpty();
  }

  @Test
  void theOldestContentsMakeWayForTheLatest() {
    ShelfBook book = new ShelfBook(Scene.ofThreeCups().request().studio());
    for (int ware = 0; ware < 700; ware++) {
      book.fits(PLACE, List.of(content(ware, 1)));
    }
    assertThat(book.contents(PLACE)).hasSize(600);
    assertThat(book.contents(PLACE).get(599).counts()).isEqualTo(Map.of(699, 1));
  }
}
