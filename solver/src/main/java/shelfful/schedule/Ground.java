package shelfful.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.ware.FiringKind;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.Program;
import shelfful.week.WeekRequest;

/**
 * What is the same for every plan of one week: the ware in lots, the kilns' programs, the clock.
 */
final class Ground {
  private static final long DAY = 24 * 60;
  private static final int FEW_UNITS = 48;

  private final WeekRequest request;
  private final MinuteClock clock;
  private final LotMaker ware;
  private final List<KilnProgram> programs = new ArrayList<>();
  private final Map<UnitKey, Lot> lotOf = new HashMap<>();
  private final Map<FiringKey, Share.KilnDay> earlier = new HashMap<>();

  /** A piece by its batch and number. */
  record UnitKey(String batchId, int number) {}

  /** A piece in a kind of firing. */
  record FiringKey(String batchId, int number, FiringKind kind) {}

  Ground(WeekRequest request) {
    this.request = request;
    this.clock = new MinuteClock(request);
    this.ware = new LotMaker(request);
    for (int kiln = 0; kiln < request.kilns().size(); kiln++) {
      KilnWork work = request.kilns().get(kiln);
      for (Program program : work.programs()) {
        programs.add(new KilnProgram(programs.size(), kiln, work.kilnId(), program));
      }
    }
    for (Lot lot : ware.lots()) {
      lot.members()
          .forEach(
              line ->
                  lot.numbers().forEach(n -> lotOf.put(new UnitKey(line.batch().id(), n), lot)));
    }
    request.earlier().forEach(this::rememberEarlier);
  }

  private void rememberEarlier(PlannedFiring firing) {
    Optional<KilnProgram> program = program(firing.kilnId(), firing.programId());
    program.ifPresent(
        p ->
            firing
                .portions()
                .forEach(
                    portion ->
                        portion
                            .numbers()
                            .forEach(
                                n ->
                                    earlier.put(
                                        new FiringKey(portion.batchId(), n, p.program().kind()),
                                        new Share.KilnDay(
                                            p.kiln(),
                                            clock.day(clock.minute(firing.times().loads())))))));
  }

  WeekRequest request() {
    return request;
  }

  MinuteClock clock() {
    return clock;
  }

  List<Lot> lots() {
    return ware.lots();
  }

  List<UnitKind> kinds() {
    return ware.kinds();
  }

  List<KilnProgram> programs() {
    return List.copyOf(programs);
  }

  Optional<KilnProgram> program(String kilnId, String programId) {
    return programs.stream()
        .filter(p -> p.kilnId().equals(kilnId) && p.program().id().equals(programId))
        .findFirst();
  }

  Optional<Lot> lotOf(String batchId, int number) {
    return Optional.ofNullable(lotOf.get(new UnitKey(batchId, number)));
  }

  /** Where a unit was in the plan before. */
  Share.KilnDay earlier(Lot lot, int number, FiringKind kind) {
    return lot.going(kind).stream()
        .map(line -> earlier.get(new FiringKey(line.batch().id(), number, kind)))
        .filter(found -> found != null)
        .findFirst()
        .orElse(Share.KilnDay.NONE);
  }

  /** Whether there are so few units that each can be planned by itself. */
  boolean isSmall() {
    return lots().stream().mapToInt(lot -> lot.numbers().size()).sum() <= FEW_UNITS;
  }

  /** Minutes from unpacking the bisque until ware can be glaze fired. */
  long glazing() {
    return request.pauses().glazingDays() * DAY;
  }

  /** The first day on which any of a lot is due, however far the way there; far off if none is. */
  long wanted(Lot lot) {
    return lot.members().stream()
        .flatMap(line -> line.batch().due().stream())
        .mapToLong(clock::day)
        .min()
        .orElse(Long.MAX_VALUE / 2);
  }

  /** Whether a program is meant for what a lot still needs, whatever the room. */
  boolean suits(KilnProgram program, Lot lot, FiringKind kind) {
    return program.program().kind() == kind
        && lot.going(kind).stream()
            .allMatch(line -> Wants.of(line.batch(), kind, request.studio()).areMetBy(program));
  }
}
