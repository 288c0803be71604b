package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.Weeks;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Stage;

class LoadBookTest {
  private static final KilnProgram GLAZE = new KilnProgram(1, 0, "K1", Weeks.glaze());

  private final UnitKind basin =
      new Ground(
              Weeks.week(
                  7,
                  List.of(Weeks.kiln("K1", Weeks.weekdays())),
                  List.of(Weeks.ware("A", "basin", 9, Stage.GLAZED, "2026-06-05"))))
          .lots()
          .get(0)
          .glaze()
          .orElseThrow();
  private final List<Optional<String>> tried = new ArrayList<>();

  /** Notes which column plan is asked for. */
  private LoadBook book(FavouritePlans favourites) {
    LoadSource source =
        load -> {
          tried.add(load.columnPlanId());
          return new PlanALoad(load).run(SearchLength.ofSteps(load.steps()), PlanListener.none());
        };
    return new LoadBook(withTiles(), source, 1, Optional.of(favourites));
  }

  /**
   * The kiln of the fixture with a second column plan, on whose tiles a basin's foot is too wide.
   */
  private static Studio withTiles() {
    Studio plain = Weeks.studio(1);
    Kiln kiln = plain.kilns().get(0);
    Column tiles =
        new Column(
            "T",
            List.of(new ShelfPlace(List.of("tile"), Point.ORIGIN, Angle.ZERO)),
            List.of(
                Point.ofMillimetres(0, 55),
                Point.ofMillimetres(-48, -28),
                Point.ofMillimetres(48, -28)),
            List.of());
    List<ColumnPlan> plans = new ArrayList<>(kiln.columnPlans());
    plans.add(new ColumnPlan("tiles", "tiles", List.of(tiles)));
    List<Shelf> shelves = new ArrayList<>(plain.shelves());
    shelves.add(
        new Shelf(
            "tile",
            "tile",
            new ShelfOutline.FullRound(Length.ofMillimetres(150)),
            Length.ofMillimetres(16),
            Optional.empty(),
            Optional.of(new Cone("10")),
            4));
    return new Studio(
        plain.name(),
        plain.unit(),
        plain.forms(),
        plain.glazes(),
        List.of(
            new Kiln(
                kiln.id(),
                kiln.name(),
                kiln.loading(),
                kiln.chamber(),
                kiln.hottest(),
                kiln.keepOuts(),
                plans)),
        shelves,
        plain.posts(),
        plain.rules());
  }

  @Test
  void whatTheFavouriteColumnPlanCannotHoldIsTriedInAllBeforeItIsRefused() {
    FavouritePlans favourites = new FavouritePlans();
    favourites.tried(GLAZE, Map.of("tiles", 1.0));
    favourites.tried(GLAZE, Map.of("tiles", 1.0));
    LoadBook book = book(favourites);

    LoadAnswer answer = book.load(GLAZE, List.of(new Asked(basin, 1, 1, 0, 1)), 4).orElseThrow();

    assertThat(tried).containsExactly(Optional.of("tiles"), Optional.of("full"));
    assertThat(answer.count(basin)).isEqualTo(2);
    assertThat(answer.refused()).isEmpty();
  }

  @Test
  void thePlanThatHoldsMostIsTakenAndBecomesTheFavourite() {
    FavouritePlans favourites = new FavouritePlans();
    LoadBook book = book(favourites);

    for (int units = 7; units <= 9; units++) {
      LoadAnswer answer =
          book.load(GLAZE, List.of(new Asked(basin, 0, 0, units, 1)), 4).orElseThrow();
      assertThat(answer.load().columnPlanId()).isEqualTo("full");
      assertThat(answer.count(basin)).as("three levels of one").isEqualTo(3);
      assertThat(answer.refused()).isEmpty();
    }
    assertThat(tried)
        .extracting(Optional::orElseThrow)
        .as("both, both, then the better one")
        .containsExactly("full", "tiles", "full", "tiles", "full");
  }
}
