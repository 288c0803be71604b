package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.Weeks;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Stage;
import shelfful.week.WeekRequest;

class LikeLoadsTest {
  private static final KilnProgram GLAZE = new KilnProgram(1, 0, "K1", Weeks.glaze());
  private static final KilnProgram OTHER = new KilnProgram(2, 0, "K1", Weeks.glaze());

  private final WeekRequest week =
      Weeks.week(
          7,
          List.of(Weeks.kiln("K1", Weeks.weekdays())),
          List.of(
              Weeks.ware("A", "basin", 5, Stage.GLAZED, "2026-06-05"),
              Weeks.ware("B", "drum", 5, Stage.GLAZED, "2026-06-05")));
  private final List<Lot> lots = new Ground(week).lots();
  private final UnitKind basin = lots.get(0).glaze().orElseThrow();
  private final UnitKind drum = lots.get(1).glaze().orElseThrow();
  private LoadRequest last;
  private Optional<Load> begunFrom = Optional.empty();

  private final LoadSource source =
      new LoadSource() {
        @Override
        public Optional<InspectedLoad> plan(LoadRequest request) {
          last = request;
          return new PlanALoad(request)
              .run(SearchLength.ofSteps(request.steps()), PlanListener.none());
        }

        @Override
        public Optional<InspectedLoad> plan(LoadRequest request, Load like) {
          begunFrom = Optional.of(like);
          return plan(request);
        }
      };
  private final LoadBook book =
      new LoadBook(Weeks.studio(1), source, 1, Optional.of(new FavouritePlans()));

  @Test
  void theNextLoadOfMuchTheSameWareBeginsFromTheOneBeforeUnderItsOwnNames() {
    LoadAnswer first = book.load(GLAZE, List.of(new Asked(basin, 0, 0, 2, 1)), 3).orElseThrow();
    assertThat(begunFrom).isEmpty();
    assertThat(first.count(basin)).isEqualTo(2);

    book.load(GLAZE, List.of(new Asked(basin, 1, 0, 2, 1)), 3).orElseThrow();

    Load begun = begunFrom.orElseThrow();
    List<String> asked = last.pieces().stream().map(piece -> piece.id()).toList();
    assertThat(asked).containsAll(begun.standing());
    assertThat(begun.standing()).hasSize(2).anyMatch(id -> !id.contains("+"));
  }

  @Test
  void whatIsNotAskedForAnyMoreHasANameThatNobodyKnows() {
    book.load(GLAZE, List.of(new Asked(basin, 0, 0, 2, 1)), 3).orElseThrow();

    book.load(GLAZE, List.of(new Asked(basin, 0, 0, 1, 1), new Asked(drum, 0, 0, 1, 1)), 3)
        .orElseThrow();

    List<String> asked = last.pieces().stream().map(piece -> piece.id()).toList();
    assertThat(begunFrom.orElseThrow().standing().stream().filter(asked::contains)).hasSize(1);
    assertThat(begunFrom.orElseThrow().standing().stream().filter(id -> id.startsWith("gone ")))
        .hasSize(1);
  }

  @Test
  void otherWareAndOtherProgramsBeginFromNothing() {
    book.load(GLAZE, List.of(new Asked(basin, 0, 0, 2, 1)), 3).orElseThrow();

    book.load(GLAZE, List.of(new Asked(drum, 0, 0, 2, 1)), 3).orElseThrow();
    book.load(OTHER, List.of(new Asked(basin, 0, 0, 2, 1)), 3).orElseThrow();

    assertThat(begunFrom).isEmpty();
  }
}
