package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.Weeks;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.schedule.RealFiring.Going;
import shelfful.ware.Stage;
import shelfful.week.WeekRequest;

/**
 * Two glaze firings of a kiln that holds three basins, or two drums, or a drum and a basin (see
 * {@link Weeks}), the one on Monday and the other a week later, and something left over.
 */
class ReshufflingTest {
  private static final long DAY = 24 * 60;
  private static final int STEPS = 4;

  private final WeekRequest week =
      Weeks.week(
          14,
          List.of(Weeks.kiln("K1", Weeks.weekdays())),
          List.of(
              Weeks.ware("A", "basin", 6, Stage.GLAZED, "2026-06-14"),
              Weeks.ware("B", "drum", 4, Stage.GLAZED, "2026-06-14"),
              Weeks.ware("C", "basin", 3, Stage.GLAZED, "2026-06-05")));
  private final Ground ground = new Ground(week);
  private final RoomBook room = new RoomBook(week, ground.kinds()).forSearched();
  private final LoadBook loads =
      new LoadBook(
          week.studio(),
          load -> new PlanALoad(load).run(SearchLength.ofSteps(load.steps()), PlanListener.none()),
          1,
          Optional.of(new FavouritePlans()));
  private final KilnProgram glaze = ground.program("K1", "glaze").orElseThrow();
  private final Reshuffling reshuffling = new Reshuffling(ground, room, loads, () -> false);
  private final List<RealFiring> firings = new ArrayList<>();

  private Chunk chunk(String batchId, long ready, Integer... numbers) {
    Lot lot = ground.lotOf(batchId, numbers[0]).orElseThrow();
    return new Chunk(
        lot, List.of(numbers), false, true, ready, -1, Optional.empty(), Optional.empty());
  }

  private void fires(long day, Chunk... chunks) {
    Map<UnitKind, Integer> counts = new HashMap<>();
    Map<Integer, Going> going = new TreeMap<>();
    for (Chunk chunk : chunks) {
      counts.merge(chunk.lot().glaze().orElseThrow(), chunk.numbers().size(), Integer::sum);
      going.put(chunk.lot().index(), new Going(chunk.lot(), chunk.numbers()));
    }
    List<Asked> asked =
        counts.entrySet().stream().map(e -> new Asked(e.getKey(), e.getValue(), 0, 0, 1)).toList();
    LoadAnswer answer = loads.load(glaze, asked, STEPS).orElseThrow();
    Turnaround times = new Turnaround(day * DAY, day * DAY + 27 * 60, day * DAY + 28 * 60);
    List<Going> all = List.copyOf(going.values());
    RealFiring firing =
        new RealFiring(
            glaze,
            times,
            all,
            Optional.of(new LoadNaming(week, glaze, all).named(answer, times)),
            Optional.empty());
    firings.add(firing);
    reshuffling.holds(firing, List.of(chunks));
  }

  private Optional<Rollout.Rolled> settled(Chunk... open) {
    return reshuffling.settle(firings, List.of(open), STEPS, 1);
  }

  /** What stands in a firing, as batch and number within the load; judged. */
  private static List<String> standing(RealFiring firing) {
    assertThat(new Inspector().inspect(firing.load().orElseThrow()))
        .isInstanceOf(Inspection.Passed.class);
    return firing.load().orElseThrow().standing().stream().sorted().toList();
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

    assertThat(standing(settled.firings().get(0))).containsExactly("A-001", "A-002");
    assertThat(standing(settled.firings().get(1))).containsExactly("B-001", "B-002");
  }

  @Test
  void nothingIsMadeLateByIt() {
    fires(0, chunk("C", 0, 1), chunk("B", 0, 1));
    fires(7, chunk("A", 0, 1));

    assertThat(settled(chunk("B", 0, 2), chunk("B", 0, 3)))
        .as("both drums fit, but one only where a basin due on Friday stands")
        .isEmpty();
    assertThat(settled(chunk("C", 0, 2))).as("due before the only room for it is fired").isEmpty();
  }

  @Test
  void littleIsLittleOfAKilnful() {
    assertThat(reshuffling.isLittle(List.of())).isFalse();
    assertThat(reshuffling.isLittle(List.of(chunk("A", 0, 1, 2, 3), chunk("B", 0, 1, 2, 3, 4))))
        .isFalse();
  }
}
