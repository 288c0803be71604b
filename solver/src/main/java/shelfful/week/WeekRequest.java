package shelfful.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import shelfful.kiln.Kiln;
import shelfful.measure.Cone;
import shelfful.studio.Studio;

/**
 * What is asked of a run of firings.
 *
 * @param studio everything there is to work with
 * @param start the earliest moment anything can be loaded
 * @param lastDay every firing is unpacked by the end of this day
 * @param lines the ware; ids of batches unique
 * @param kilns the kilns that are fired, each once
 * @param pauses between one work and the next
 * @param tariff what electricity costs; empty when costs are not wanted
 * @param together orders that asked to be fired together where that makes nothing late
 * @param held firings that must stay, as much as their {@link Hold} says; none of them free
 * @param earlier the firings of the plan before, which is changed as little as possible; may be
 *     empty
 * @param effort how hard to look
 */
public record WeekRequest(
    Studio studio,
    LocalDateTime start,
    LocalDate lastDay,
    List<WareLine> lines,
    List<KilnWork> kilns,
    Pauses pauses,
    Optional<Tariff> tariff,
    SortedSet<String> together,
    List<PlannedFiring> held,
    List<PlannedFiring> earlier,
    WeekEffort effort) {
  private static final int MOST_DAYS = 120;

  /** Takes its own copies and refuses what does not belong together. */
  public WeekRequest {
    lines = List.copyOf(lines);
    kilns = List.copyOf(kilns);
    together = Collections.unmodifiableSortedSet(new TreeSet<>(together));
    held = List.copyOf(held);
    earlier = List.copyOf(earlier);
    if (lastDay.isBefore(start.toLocalDate())
        || lastDay.isAfter(start.toLocalDate().plusDays(MOST_DAYS))) {
      throw new IllegalArgumentException(
          "The last day must be the first or one of the 120 after it, not " + lastDay);
    }
    if (held.stream().anyMatch(firing -> firing.hold() == Hold.FREE)) {
      throw new IllegalArgumentException("A firing that is held must not be free");
    }
    requireKnown(studio, lines, kilns);
  }

  private static void requireKnown(Studio studio, List<WareLine> lines, List<KilnWork> kilns) {
    TreeSet<String> ids = new TreeSet<>();
    for (WareLine line : lines) {
      boolean glazeKnown =
          line.batch().glazeId().map(id -> studio.glaze(id)).map(Optional::isPresent).orElse(true);
      if (!ids.add(line.batch().id())
          || studio.form(line.batch().formId()).isEmpty()
          || !glazeKnown) {
        throw new IllegalArgumentException(
            "Batch "
                + line.batch().id()
                + " is there twice, or of a form or in a glaze the studio lacks");
      }
    }
    TreeSet<String> seen = new TreeSet<>();
    for (KilnWork work : kilns) {
      Optional<Kiln> kiln = studio.kiln(work.kilnId());
      if (kiln.isEmpty() || !seen.add(work.kilnId())) {
        throw new IllegalArgumentException(
            "The kiln " + work.kilnId() + " is there twice, or the studio lacks it");
      }
      requireCoolEnough(kiln.get(), work);
    }
  }

  private static void requireCoolEnough(Kiln kiln, KilnWork work) {
    for (Program program : work.programs()) {
      Cone hottest = kiln.hottest().orElse(program.cone());
      if (program.cone().isHotterThan(hottest)) {
        throw new IllegalArgumentException(
            "The program "
                + program.id()
                + " goes to cone "
                + program.cone().number()
                + ", but the kiln "
                + kiln.id()
                + " may only be fired to cone "
                + hottest.number());
      }
    }
  }

  /** The line of a batch. */
  public Optional<WareLine> line(String batchId) {
    return lines.stream().filter(line -> line.batch().id().equals(batchId)).findFirst();
  }

  /** A kiln at work. */
  public Optional<KilnWork> kiln(String kilnId) {
    return kilns.stream().filter(work -> work.kilnId().equals(kilnId)).findFirst();
  }

  /** The program of a firing; empty when its kiln or the program is not there. */
  public Optional<Program> program(PlannedFiring firing) {
    return kiln(firing.kilnId()).flatMap(kiln -> kiln.program(firing.programId()));
  }

  /** How many pieces the list has, lids not counted. */
  public int pieces() {
    return lines.stream().mapToInt(line -> line.batch().quantity()).sum();
  }

  /** The moment by which every firing is unpacked. */
  public LocalDateTime end() {
    return lastDay.plusDays(1).atStartOfDay();
  }

  /** The same with other firings held. */
  public WeekRequest holding(List<PlannedFiring> others) {
    return new WeekRequest(
        studio, start, lastDay, lines, kilns, pauses, tariff, together, others, earlier, effort);
  }

  /** The same, to be changed as little as possible against these firings. */
  public WeekRequest after(List<PlannedFiring> before) {
    return new WeekRequest(
        studio, start, lastDay, lines, kilns, pauses, tariff, together, held, before, effort);
  }

  /** The same with other kilns at work. */
  public WeekRequest firedIn(List<KilnWork> others) {
    return new WeekRequest(
        studio, start, lastDay, lines, others, pauses, tariff, together, held, earlier, effort);
  }

  /** The same with other ware. */
  public WeekRequest of(List<WareLine> others) {
    return new WeekRequest(
        studio, start, lastDay, others, kilns, pauses, tariff, together, held, earlier, effort);
  }

  /** The same looked at otherwise. */
  public WeekRequest with(WeekEffort other) {
    return new WeekRequest(
        studio, start, lastDay, lines, kilns, pauses, tariff, together, held, earlier, other);
  }
}
