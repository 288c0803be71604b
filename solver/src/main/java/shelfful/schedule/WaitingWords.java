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
  private static final Comparator<Key> ORDER =
      Comparator.comparing((Key key) -> key.missed() + " " + key.reason())
          .thenComparing(Key::next)
          .thenComparing(Key::set);

  private final Ground ground;
  private final RoomBook room;

  WaitingWords(Ground ground, RoomBook room) {
    this.ground = ground;
    this.room = room;
  }

  /**
   * What is alike for pieces of a batch that one line tells of.
   *
   * @param missed the first firing that they themselves miss
   * @param next the firing that their set, or they by themselves, would go into next
   * @param set whether they wait with other pieces of a set, any of which may be the cause
   */
  private record Key(FiringKind missed, FiringKind next, Reason reason, boolean set) {}

  /**
   * A line for every batch, kind of firing and reason.
   *
   * @param complete whether planning was not stopped before everything had its turn
   */
  List<Waiting> of(List<Chunk> open, boolean complete) {
    Map<String, Map<Key, TreeSet<Integer>>> byBatch = new TreeMap<>();
    for (Chunk chunk : open) {
      FiringKind next = chunk.bisque() ? FiringKind.BISQUE : FiringKind.GLAZE;
      Reason reason = reason(chunk, next, complete);
      boolean set = chunk.lot().members().size() > 1;
      for (WareLine line : chunk.lot().members()) {
        // Of a set some may need no bisque: they wait for the glaze firing.
        FiringKind missed = line.needs().contains(next) ? next : FiringKind.GLAZE;
        if (line.needs().contains(missed) && chunk.needs(missed)) {
          byBatch
              .computeIfAbsent(line.batch().id(), any -> new HashMap<>())
              .computeIfAbsent(new Key(missed, next, reason, set), any -> new TreeSet<>())
              .addAll(chunk.numbers());
        }
      }
    }
    List<Waiting> all = new ArrayList<>();
    for (WareLine line : ground.request().lines()) {
      byBatch.getOrDefault(line.batch().id(), Map.of()).entrySet().stream()
          .sorted(Map.Entry.comparingByKey(ORDER))
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
    if (!complete) {
      // A load that was broken off tells nothing of what can stand.
      return Reason.NOT_PLANNED;
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
    return inTime ? Reason.NO_TURN : Reason.READY_TOO_LATE;
  }

  private Waiting waiting(WareLine line, Key key, TreeSet<Integer> numbers) {
    return new Waiting(
        new Portion(line.batch().id(), List.copyOf(numbers)),
        key.missed(),
        key.reason(),
        sentence(key),
        mend(key.reason()));
  }

  /** Of a set it is said of the set, since it may be true of another of its pieces alone. */
  private String sentence(Key key) {
    LocalDate last = ground.request().lastDay();
    String firing = key.next() == FiringKind.BISQUE ? "bisque" : "glaze";
    return switch (key.reason()) {
      case NO_PROGRAM ->
          "No kiln has a "
              + firing
              + " program for "
              + (key.set()
                  ? "the cones and atmospheres of its whole set."
                  : "its cone and atmosphere.");
      case CANNOT_STAND ->
          (key.set() ? "Its set" : "It")
              + " was found to stand in no kiln that has a program for it.";
      case READY_TOO_LATE ->
          (key.set() ? "Its set" : "It")
              + " is ready too late to be unpacked from a "
              + firing
              + " firing by "
              + last
              + ".";
      case NOT_PLANNED -> "Planning was stopped before it had its turn.";
      case NO_TURN ->
          "No "
              + firing
              + " firing up to "
              + last
              + " was left with room for "
              + (key.set() ? "its set." : "it.");
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
