package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.schedule.Exchange.Loaded;
import shelfful.ware.Stage;

/** A glaze firing of a kiln that holds three basins, or two drums, or a drum and a basin. */
class ExchangeTest {
  private static final double BEFORE_ALL_ELSE = Double.POSITIVE_INFINITY;

  private final GlazeFirings week =
      new GlazeFirings(
          Weeks.ware("A", "basin", 6, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"));
  private final Chunk drums = week.chunk("B", 0, 1, 2);
  private final Chunk basin = week.chunk("A", 0, 1);

  /**
   * With two drums in it, planned again.
   *
   * @param lastDay on which another firing could still take a drum
   */
  private Optional<Exchange.Made> made(double eagerness, long lastDay) {
    Loaded loaded = new Loaded(week.firing(0, drums), List.of(drums));
    return new Exchange(week.ground(), week.room(), week.loads(), loaded, lastDay)
        .make(List.of(basin), eagerness, GlazeFirings.STEPS);
  }

  private static List<String> standing(Exchange.Made made) {
    return GlazeFirings.standing(made.loaded().firing());
  }

  @Test
  void whatTakesLessRoomThanWhatIsInItStaysOut() {
    Exchange.Made made = made(1, 7).orElseThrow();

    assertThat(standing(made)).containsExactly("B-001", "B-002");
    assertThat(made.open()).containsExactly(basin);
  }

  @Test
  void whatComesBeforeAllElseGoesInWhateverMakesWay() {
    Exchange.Made made = made(BEFORE_ALL_ELSE, 7).orElseThrow();

    assertThat(standing(made)).containsExactly("A-001", "B-001");
    assertThat(made.open()).containsExactly(week.chunk("B", 0, 2));
  }

  @Test
  void whatWouldBeLateElsewhereStaysAllTheSame() {
    assertThat(made(BEFORE_ALL_ELSE, 20).map(ExchangeTest::standing))
        .as("the drums are due before the last day")
        .isIn(Optional.empty(), Optional.of(List.of("B-001", "B-002")));
  }

  @Test
  void whatAskedToGoTogetherAndIsLeftGoesInAllTheSame() {
    GlazeFirings ordered =
        new GlazeFirings(Set.of("J1"), Weeks.ordered("A", "basin", 3, Stage.GLAZED, "J1"));
    Chunk first = ordered.chunk("A", 0, 1);
    Loaded loaded = new Loaded(ordered.firing(0, first), List.of(first));

    Exchange.Made made =
        new Exchange(ordered.ground(), ordered.room(), ordered.loads(), loaded, 20)
            .make(List.of(ordered.chunk("A", 0, 2)), 1.5, GlazeFirings.STEPS)
            .orElseThrow();

    assertThat(standing(made)).containsExactly("A-001", "A-002");
    assertThat(made.open()).isEmpty();
  }
}
