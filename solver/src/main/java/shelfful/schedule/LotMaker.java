package shelfful.schedule;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import shelfful.ware.FiringKind;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/** Sorts the ware of a week into lots. */
final class LotMaker {
  private final WeekRequest request;
  private final MinuteClock clock;
  private final Map<List<PartSpec>, UnitKind> bisque = new LinkedHashMap<>();
  private final Map<List<PartSpec>, UnitKind> glaze = new LinkedHashMap<>();
  private final List<UnitKind> kinds = new ArrayList<>();
  private final List<Lot> lots = new ArrayList<>();

  LotMaker(WeekRequest request) {
    this.request = request;
    this.clock = new MinuteClock(request);
    Map<String, List<WareLine>> groups = new LinkedHashMap<>();
    for (WareLine line : request.lines()) {
      if (!line.needs().isEmpty()) {
        String key =
            line.batch().set().map(set -> "set " + set).orElse("batch " + line.batch().id());
        groups.computeIfAbsent(key, any -> new ArrayList<>()).add(line);
      }
    }
    groups.values().forEach(this::group);
  }

  List<Lot> lots() {
    return List.copyOf(lots);
  }

  List<UnitKind> kinds() {
    return List.copyOf(kinds);
  }

  /** The k-th pieces of all batches of a set are one unit; a shorter batch has none at the end. */
  private void group(List<WareLine> lines) {
    TreeSet<Integer> ends = new TreeSet<>();
    lines.forEach(line -> ends.add(line.batch().quantity()));
    int first = 1;
    for (int last : ends) {
      int least = first;
      List<WareLine> members =
          lines.stream().filter(line -> line.batch().quantity() >= least).toList();
      lots.add(lot(members, IntStream.rangeClosed(first, last).boxed().toList()));
      first = last + 1;
    }
  }

  private Lot lot(List<WareLine> members, List<Integer> numbers) {
    return new Lot(
        lots.size(),
        members,
        numbers,
        kind(members, FiringKind.BISQUE, bisque),
        kind(members, FiringKind.GLAZE, glaze),
        ready(members, FiringKind.BISQUE),
        ready(members, FiringKind.GLAZE));
  }

  private Optional<UnitKind> kind(
      List<WareLine> members, FiringKind kind, Map<List<PartSpec>, UnitKind> known) {
    List<PartSpec> parts =
        members.stream()
            .filter(line -> line.needs().contains(kind))
            .map(line -> PartSpec.of(line.batch(), kind))
            .toList();
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    UnitKind made = known.get(parts);
    if (made == null) {
      made = new UnitKind(kinds.size(), kind, parts);
      kinds.add(made);
      known.put(parts, made);
    }
    return Optional.of(made);
  }

  /** The latest of those whose first firing is of this kind. */
  private long ready(List<WareLine> members, FiringKind kind) {
    return members.stream()
        .filter(line -> line.needs().get(0) == kind)
        .map(line -> line.firstReady(request.start(), request.pauses()))
        .max(LocalDateTime::compareTo)
        .map(clock::minute)
        .orElse(0L);
  }
}
