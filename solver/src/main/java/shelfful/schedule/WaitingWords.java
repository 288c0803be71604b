package shelfful.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import shelfful.ware.FiringKind;
import shelfful.week.Portion;
import shelfful.week.Waiting;
import shelfful.week.Waiting.Reason;
import shelfful.week.WareLine;

/** Why ware waits, in words. */
final class WaitingWords {
  private final Ground ground;
  private final RoomBook room;

  WaitingWords(Ground ground, RoomBook room) {
    this.ground = ground;
    this.room = room;
  }

  private record Key(FiringKind kind, Reason reason) {}

  /**
   * A line for every batch, kind of firing and reason.
   *
   * @param complete whether planning was not stopped before everything had its turn
   */
  List<Waiting> of(List<Chunk> open, boolean complete) {
    Map<String, Map<Key, TreeSet<Integer>>> byBatch = new TreeMap<>();
    for (Chunk chunk : open) {
      FiringKind kind = chunk.bisque() ? FiringKind.BISQUE : FiringKind.GLAZE;
      for (WareLine line : chunk.lot().members()) {
        // Of a set some may need no bisque: they wait for the glaze firing.
        FiringKind missed = line.needs().contains(kind) ? kind : FiringKind.GLAZE;
        if (line.needs().contains(missed) && chunk.needs(missed)) {
          Key key = new Key(missed, reason(chunk, kind, complete));
          byBatch
              .computeIfAbsent(line.batch().id(), any -> new HashMap<>())
              .computeIfAbsent(key, any -> new TreeSet<>())
              .addAll(chunk.numbers());
        }
      }
    }
    List<Waiting> all = new ArrayList<>();
    for (WareLine line : ground.request().lines()) {
      byBatch.getOrDefault(line.batch().id(), Map.of()).entrySet().stream()
          .sorted(
              Comparator.comparing(entry -> entry.getKey().kind() + " " + entry.getKey().reason()))
          .forEach(entry -> all.add(waiting(line, entry.getKey(), entry.getValue())));
    }
    return all;
  }

  private Reason reason(Chunk chunk, FiringKind kind, boolean complete) {
    List<KilnProgram> suiting =
        ground.programs().stream().filter(p -> ground.suits(p, chunk.lot(), kind)).toList();
    if (suiting.isEmpty()) {
      return Reason.NO_PROGRAM;
    }
    UnitKind unit = chunk.lot().kind(kind).orElseThrow();
    List<KilnProgram> standing = suiting.stream().filter(p -> !room.refuses(p, unit)).toList();
    if (standing.isEmpty()) {
      return Reason.CANNOT_STAND;
    }
    boolean inTime =
        standing.stream()
            .anyMatch(
                p ->
                    new Timetable(
                            ground.request(), ground.request().kilns().get(p.kiln()), List.of())
                        .next(p, chunk.ready())
                        .isPresent());
    if (!inTime) {
      return Reason.READY_TOO_LATE;
    }
    return complete ? Reason.NO_TURN : Reason.NOT_PLANNED;
  }

  private Waiting waiting(WareLine line, Key key, TreeSet<Integer> numbers) {
    String firing = key.kind() == FiringKind.BISQUE ? "bisque" : "glaze";
    return new Waiting(
        new Portion(line.batch().id(), List.copyOf(numbers)),
        key.kind(),
        key.reason(),
        sentence(key.reason(), firing),
        mend(key.reason()));
  }

  private String sentence(Reason reason, String firing) {
    LocalDate last = ground.request().lastDay();
    return switch (reason) {
      case NO_PROGRAM -> "No kiln has a " + firing + " program for its cone and atmosphere.";
      case CANNOT_STAND -> "It was found to stand in no kiln that has a program for it.";
      case READY_TOO_LATE ->
          "It is ready too late to be unpacked from a " + firing + " firing by " + last + ".";
      case NOT_PLANNED -> "Planning was stopped before it had its turn.";
      case NO_TURN -> "No " + firing + " firing up to " + last + " was left with room for it.";
    };
  }

  private static String mend(Reason reason) {
    return switch (reason) {
      case NO_PROGRAM -> "Add such a program to a kiln.";
      case CANNOT_STAND -> "Plan it alone to see what is in its way.";
      case READY_TOO_LATE -> "Choose a later last day.";
      case NOT_PLANNED -> "Plan again.";
      case NO_TURN -> "Choose a later last day, add a firing, or let other ware wait.";
    };
  }
}
