package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.schedule.Exchange.Loaded;
import shelfful.ware.Stage;

/**
 * Glaze firings with a piece on each of two levels (see {@link Weeks}): which it is is all that can
 * be chosen, since tucking in builds no levels.
 */
class TuckingInTest {
  private static final long DAY = GlazeFirings.DAY;

  private final GlazeFirings week =
      new GlazeFirings(
          Weeks.ware("A", "basin", 6, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("C", "basin", 3, Stage.GLAZED, "2026-06-05"));
  private final List<Loaded> firings = new ArrayList<>();

  private Chunk chunk(String batchId, long ready, Integer... numbers) {
    return week.chunk(batchId, ready, numbers);
  }

  private void fires(long day, Chunk... chunks) {
    firings.add(new Loaded(week.firing(day, chunks), List.of(chunks)));
  }

  private Optional<TuckingIn.Tucked> tucked(Chunk... open) {
    return new TuckingIn(week.ground(), week.room(), week.loads())
        .tuck(firings, List.of(open), 3_000, 5);
  }

  private static List<Integer> numbers(Loaded loaded, String batchId) {
    return loaded.ware().stream()
        .filter(chunk -> chunk.lot().members().get(0).batch().id().equals(batchId))
        .flatMap(chunk -> chunk.numbers().stream())
        .sorted()
        .toList();
  }

  @Test
  void whatIsWorthMoreTakesThePlaceOfAnother() {
    fires(0, chunk("A", 0, 1), chunk("B", 0, 1));

    TuckingIn.Tucked tucked = tucked(chunk("B", 0, 2)).orElseThrow();

    assertThat(numbers(tucked.loaded().get(0), "B")).containsExactly(1, 2);
    assertThat(numbers(tucked.loaded().get(0), "A")).isEmpty();
    assertThat(GlazeFirings.standing(tucked.loaded().get(0).firing()))
        .containsExactly("B-001", "B-002");
    assertThat(tucked.open()).hasSize(1);
    assertThat(tucked.open().get(0).lot().members().get(0).batch().id()).isEqualTo("A");
    assertThat(tucked.open().get(0).numbers()).containsExactly(1);
  }

  @Test
  void whatIsReadyTooLateOrDueTooSoonStaysLeft() {
    fires(0, chunk("A", 0, 1), chunk("B", 0, 1));
    assertThat(tucked(chunk("B", 5 * DAY, 2))).as("ready on Saturday").isEmpty();
    firings.clear();
    fires(7, chunk("B", 0, 1, 2));
    assertThat(tucked(chunk("C", 0, 1))).as("due on Friday").isEmpty();
  }

  @Test
  void nothingIsLostAndEachUnitIsInOneFiring() {
    fires(0, chunk("A", 0, 1), chunk("B", 0, 1));
    fires(7, chunk("A", 0, 2), chunk("B", 0, 2));

    TuckingIn.Tucked tucked = tucked(chunk("B", 0, 3), chunk("B", 5 * DAY, 4)).orElseThrow();

    List<String> all = new ArrayList<>();
    List<Chunk> chunks = new ArrayList<>(tucked.open());
    tucked.loaded().forEach(loaded -> chunks.addAll(loaded.ware()));
    for (Chunk chunk : chunks) {
      String batchId = chunk.lot().members().get(0).batch().id();
      chunk.numbers().forEach(number -> all.add(batchId + number));
    }
    assertThat(all).containsExactlyInAnyOrder("A1", "A2", "B1", "B2", "B3", "B4");
    assertThat(numbers(tucked.loaded().get(0), "B")).as("B4 comes on Saturday").doesNotContain(4);
    tucked.loaded().forEach(loaded -> GlazeFirings.standing(loaded.firing()));
  }

  @Test
  void whatAsksToGoTogetherDoesNotMakeWay() {
    GlazeFirings ordered =
        new GlazeFirings(
            Set.of("J1"),
            Weeks.ordered("A", "basin", 2, Stage.GLAZED, "J1"),
            Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"));
    Chunk together = ordered.chunk("A", 0, 1);
    Chunk drum = ordered.chunk("B", 0, 1);
    Loaded loaded = new Loaded(ordered.firing(0, together, drum), List.of(together, drum));

    assertThat(
            new TuckingIn(ordered.ground(), ordered.room(), ordered.loads())
                .tuck(List.of(loaded), List.of(ordered.chunk("B", 0, 2)), 3_000, 5))
        .as("a second drum fits only where the basin is, which could go nowhere else")
        .isEmpty();
  }
}
