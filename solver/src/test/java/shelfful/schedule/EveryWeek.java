package shelfful.schedule;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shelfful.ware.FiringKind;
import shelfful.week.KilnWork;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/**
 * Tries every way to fire a small week in the pottery of {@code Weeks}: every kiln, program and
 * choice of pieces for the firing that comes next, each loaded as early as can be. It steps through
 * time by half hours and shares nothing with the planner.
 */
final class EveryWeek {
  private static final int STEP = 30;

  private final WeekRequest request;
  private final LocalDateTime[] free;
  private final int[] stage;
  private final LocalDateTime[] ready;
  private final WareLine[] lineOf;
  private long[] best = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};

  private EveryWeek(WeekRequest request) {
    this.request = request;
    this.free = new LocalDateTime[request.kilns().size()];
    Arrays.fill(free, request.start());
    List<WareLine> pieces = new ArrayList<>();
    for (WareLine line : request.lines()) {
      for (int i = 0; i < line.batch().quantity(); i++) {
        pieces.add(line);
      }
    }
    this.lineOf = pieces.toArray(new WareLine[0]);
    this.stage = new int[lineOf.length];
    this.ready = new LocalDateTime[lineOf.length];
    for (int i = 0; i < lineOf.length; i++) {
      ready[i] = lineOf[i].firstReady(request.start(), request.pauses());
    }
  }

  /** Days late summed over pieces, firings missed, and firings; the least in this order. */
  static List<Long> best(WeekRequest request) {
    EveryWeek every = new EveryWeek(request);
    every.next(0, 0);
    return Arrays.stream(every.best).boxed().toList();
  }

  private void next(long late, long firings) {
    long missed = 0;
    long lateByWaiting = 0;
    LocalDateTime end = request.end();
    for (int i = 0; i < lineOf.length; i++) {
      missed += lineOf[i].needs().size() - stage[i];
      if (stage[i] < lineOf[i].needs().size()) {
        long days =
            ChronoUnit.DAYS.between(lineOf[i].batch().due().orElseThrow(), end.toLocalDate());
        lateByWaiting += days > 0 ? days + 1 : 0;
      }
    }
    long[] here = {late + lateByWaiting, missed, firings};
    if (Arrays.compare(here, best) < 0) {
      best = here;
    }
    if (missed == 0 || late > best[0]) {
      return;
    }
    for (int kiln = 0; kiln < free.length; kiln++) {
      for (Program program : request.kilns().get(kiln).programs()) {
        choose(kiln, program, 0, new ArrayList<>(), late, firings);
      }
    }
  }

  private void choose(
      int kiln, Program program, int from, List<Integer> chosen, long late, long firings) {
    if (!chosen.isEmpty()) {
      fire(kiln, program, chosen, late, firings);
    }
    for (int i = from; i < lineOf.length; i++) {
      List<FiringKind> needs = lineOf[i].needs();
      boolean wanted = stage[i] < needs.size() && needs.get(stage[i]) == program.kind();
      boolean first = i == from || lineOf[i - 1] != lineOf[i] || !isAlike(i - 1, i);
      if (wanted && (first || chosen.contains(i - 1))) {
        chosen.add(i);
        if (goIn(chosen)) {
          choose(kiln, program, i + 1, chosen, late, firings);
        }
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  private boolean isAlike(int one, int other) {
    return stage[one] == stage[other] && ready[one].equals(ready[other]);
  }

  /** What the pottery of {@code Weeks} promises. */
  private boolean goIn(List<Integer> chosen) {
    long towers = count(chosen, "tower");
    long drums = count(chosen, "drum");
    long basins = count(chosen, "basin");
    return towers > 0 ? chosen.size() == 1 : drums > 0 ? drums + basins <= 2 : basins <= 3;
  }

  private long count(List<Integer> chosen, String form) {
    return chosen.stream().filter(i -> lineOf[i].batch().formId().equals(form)).count();
  }

  private void fire(int kiln, Program program, List<Integer> chosen, long late, long firings) {
    LocalDateTime earliest = free[kiln];
    for (int i : chosen) {
      earliest = ready[i].isAfter(earliest) ? ready[i] : earliest;
    }
    KilnWork work = request.kilns().get(kiln);
    LocalDateTime loads = tended(work, earliest, program.loading().toMinutes());
    LocalDateTime cold =
        loads == null
            ? null
            : loads.plus(program.loading()).plus(program.up()).plus(program.down());
    LocalDateTime unpacks =
        cold == null ? null : tended(work, cold, program.unpacking().toMinutes());
    if (unpacks == null) {
      return;
    }
    LocalDateTime unpacked = unpacks.plus(program.unpacking());
    LocalDateTime freeBefore = free[kiln];
    LocalDateTime[] readyBefore = ready.clone();
    long lateNow = late;
    free[kiln] = unpacked;
    for (int i : chosen) {
      stage[i]++;
      ready[i] = unpacked.plusDays(request.pauses().glazingDays());
      if (stage[i] == lineOf[i].needs().size()) {
        lateNow +=
            Math.max(
                0,
                ChronoUnit.DAYS.between(
                    lineOf[i].batch().due().orElseThrow(), unpacked.toLocalDate()));
      }
    }
    next(lateNow, firings + 1);
    free[kiln] = freeBefore;
    for (int i : chosen) {
      stage[i]--;
      ready[i] = readyBefore[i];
    }
  }

  /** The first half hour from which somebody is there so long; null when the week has none. */
  private LocalDateTime tended(KilnWork work, LocalDateTime from, long minutes) {
    LocalDateTime at = from;
    while (!at.plusMinutes(minutes).isAfter(request.end())) {
      if (work.calendar().isTended(new Span(at, at.plusMinutes(minutes)))) {
        return at;
      }
      at = at.plusMinutes(STEP);
    }
    return null;
  }
}
