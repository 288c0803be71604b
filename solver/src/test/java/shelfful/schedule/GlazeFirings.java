package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.fixture.Weeks;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadsTogether;
import shelfful.planning.ShelfBook;
import shelfful.schedule.RealFiring.Going;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/** Glaze firings of one kiln within two weeks, their loads really planned (see {@link Weeks}). */
final class GlazeFirings {
  static final long DAY = 24 * 60;
  static final int STEPS = 4;

  private final WeekRequest week;
  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final KilnProgram glaze;

  GlazeFirings(WareLine... ware) {
    this(Set.of(), ware);
  }

  /**
   * Firings.
   *
   * @param together orders that ask to go together
   */
  GlazeFirings(Set<String> together, WareLine... ware) {
    week =
        Weeks.together(
            Weeks.week(14, List.of(Weeks.kiln("K1", Weeks.weekdays())), List.of(ware)), together);
    ground = new Ground(week);
    room = new RoomBook(week, ground.kinds()).forSearched();
    loads = new LoadBook(week.studio(), new Source(week), 1, Optional.of(new FavouritePlans()));
    glaze = ground.program("K1", "glaze").orElseThrow();
  }

  /** Loads as the program plans them for weeks ended by time. */
  private static final class Source implements LoadSource {
    private final ShelfBook book;

    Source(WeekRequest week) {
      book = new ShelfBook(week.studio());
    }

    @Override
    public Optional<InspectedLoad> plan(LoadRequest request) {
      return new PlanALoad(request).run(SearchLength.ofSteps(request.steps()), PlanListener.none());
    }

    @Override
    public Optional<List<InspectedLoad>> together(List<Load> now, int effort, long seed) {
      return new LoadsTogether(book, () -> false)
          .better(now, effort, seed)
          .map(
              found ->
                  found.stream()
                      .map(load -> new Inspector().inspect(load).passed().orElseThrow())
                      .toList());
    }
  }

  Ground ground() {
    return ground;
  }

  RoomBook room() {
    return room;
  }

  LoadBook loads() {
    return loads;
  }

  /** Glazed pieces of a batch that are ready at a minute. */
  Chunk chunk(String batchId, long ready, Integer... numbers) {
    Lot lot = ground.lotOf(batchId, numbers[0]).orElseThrow();
    return new Chunk(
        lot, List.of(numbers), false, true, ready, -1, Optional.empty(), Optional.empty());
  }

  /** A firing loaded on a day, with some ware in it. */
  RealFiring firing(long day, Chunk... chunks) {
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
    return new RealFiring(
        glaze,
        times,
        all,
        Optional.of(new LoadNaming(week, glaze, all).named(answer, times)),
        Optional.empty());
  }

  /** What stands in a firing, as batch and number within the load; judged. */
  static List<String> standing(RealFiring firing) {
    assertThat(new Inspector().inspect(firing.load().orElseThrow()))
        .isInstanceOf(Inspection.Passed.class);
    return firing.load().orElseThrow().standing().stream().sorted().toList();
  }
}
