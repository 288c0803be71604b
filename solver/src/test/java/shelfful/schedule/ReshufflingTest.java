package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.ware.Stage;

/**
 * Two glaze firings of a kiln that holds three basins, or two drums, or a drum and a basin (see
 * {@link Weeks}), the one on Monday and the other a week later, and something left over.
 */
class ReshufflingTest {
  private static final long DAY = GlazeFirings.DAY;

  private final GlazeFirings week =
      new GlazeFirings(
          Weeks.ware("A", "basin", 6, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"),
          Weeks.ware("C", "basin", 4, Stage.GLAZED, "2026-06-05"));
  private final Reshuffling reshuffling =
      new Reshuffling(week.ground(), week.room(), week.loads(), () -> false);
  private final List<RealFiring> firings = new ArrayList<>();

  private Chunk chunk(String batchId, long ready, Integer... numbers) {
    return week.chunk(batchId, ready, numbers);
  }

  private void fires(long day, Chunk... chunks) {
    RealFiring firing = week.firing(day, chunks);
    firings.add(firing);
    reshuffling.holds(firing, List.of(chunks));
  }

  private Optional<Rollout.Rolled> settled(Chunk... open) {
    return reshuffling.settle(firings, List.of(open), GlazeFirings.STEPS, 1);
  }

  private static List<String> standing(RealFiring firing) {
    return GlazeFirings.standing(firing);
  }

  /** Batch and number of all that goes into a firing. */
  private static List<String> units(RealFiring firing) {
    return firing.going().stream()
        .flatMap(
            going ->
                going.numbers().stream()
                    .map(number -> going.lot().members().get(0).batch().id() + number))
        .toList();
  }

  @Test
  void whatThereIsRoomForGoesIn() {
    fires(0, chunk("A", 0, 1, 2));
    fires(7, chunk("B", 0, 1, 2));

    Rollout.Rolled settled = settled(chunk("A", 0, 5)).orElseThrow();

    assertThat(settled.complete()).isTrue();
    assertThat(settled.open()).isEmpty();
    assertThat(settled.firings()).hasSize(2);
    assertThat(standing(settled.firings().get(0))).containsExactly("A-001", "A-002", "A-003");
    assertThat(settled.firings().get(0).going().get(0).numbers()).containsExactly(1, 2, 5);
    assertThat(standing(settled.firings().get(1))).containsExactly("B-001", "B-002");
  }

  @Test
  void anotherMakesRoomForWhatIsReadyTooLateToGoElsewhere() {
    fires(0, chunk("A", 0, 1));
    fires(7, chunk("A", 0, 2), chunk("B", 0, 1));

    Rollout.Rolled settled = settled(chunk("B", 5 * DAY, 2)).orElseThrow();

    assertThat(settled.open()).isEmpty();
    List<String> sooner = units(settled.firings().get(0));
    List<String> later = units(settled.firings().get(1));
    assertThat(later).as("ready on Saturday").hasSize(2).contains("B2");
    assertThat(sooner).hasSize(2);
    assertThat(Stream.concat(sooner.stream(), later.stream()))
        .as("each in one of them")
        .containsExactlyInAnyOrder("A1", "A2", "B1", "B2");
    settled.firings().forEach(firing -> assertThat(standing(firing)).hasSize(2));
  }

  @Test
  void nothingIsMadeLateByIt() {
    fires(0, chunk("C", 0, 1), chunk("B", 0, 1));
    fires(7, chunk("A", 0, 1));

    assertThat(settled(chunk("B", 0, 2), chunk("B", 0, 3)))
        .as("both drums fit, but one only where a basin due on Friday stands")
        .isEmpty();
    firings.clear();
    fires(0, chunk("C", 0, 1, 2, 3));
    fires(7, chunk("A", 0, 1));
    assertThat(settled(chunk("C", 0, 4))).as("due before the only room for it is fired").isEmpty();
  }

  @Test
  void littleIsLittleOfAKilnful() {
    assertThat(reshuffling.isLittle(firings, List.of())).isFalse();
    assertThat(
            reshuffling.isLittle(
                firings, List.of(chunk("A", 0, 1, 2, 3), chunk("B", 0, 1, 2, 3, 4))))
        .isFalse();
  }

  @Test
  void whatMayGoNowhereIsNotLookedAt() {
    fires(7, chunk("A", 0, 1));
    Chunk ready = chunk("A", 0, 2);
    UnitKind basin = ready.lot().glaze().orElseThrow();
    // As though twenty basins had gone in, so that one is little.
    week.room().learn(firings.get(0).program(), 0, Map.of(basin, 20), false);

    assertThat(reshuffling.isLittle(firings, List.of(ready))).isTrue();
    assertThat(reshuffling.isLittle(firings, List.of(ready, chunk("A", 8 * DAY, 3))))
        .as("ready after the only firing is loaded")
        .isFalse();
    assertThat(reshuffling.isLittle(firings, List.of(ready, chunk("C", 0, 2))))
        .as("due before it is unpacked")
        .isFalse();
  }
}
