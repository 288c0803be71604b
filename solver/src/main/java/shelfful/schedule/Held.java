package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shelfful.schedule.RealFiring.Going;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;

/**
 * What must stay of a plan before.
 *
 * @param frozen firings that stay whole
 * @param turns firings whose time stays
 */
record Held(List<RealFiring> frozen, List<HeldTurn> turns) {
  Held {
    frozen = List.copyOf(frozen);
    turns = List.copyOf(turns);
  }

  static Held of(Ground ground) {
    List<RealFiring> frozen = new ArrayList<>();
    List<HeldTurn> turns = new ArrayList<>();
    for (PlannedFiring firing : ground.request().held()) {
      KilnProgram program =
          ground
              .program(firing.kilnId(), firing.programId())
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "The held firing " + firing.id() + " is of a program that is not there"));
      Turnaround times = times(ground, firing);
      if (firing.hold() == Hold.ALL) {
        frozen.add(
            new RealFiring(
                program, times, going(ground, firing), firing.load(), Optional.of(firing)));
      } else {
        turns.add(new HeldTurn(firing, program, times));
      }
    }
    return new Held(frozen, turns);
  }

  private static Turnaround times(Ground ground, PlannedFiring firing) {
    return new Turnaround(
        ground.clock().minute(firing.times().loads()),
        ground.clock().minute(firing.times().unpacks()),
        ground.clock().minute(firing.times().unpacked()));
  }

  /**
   * The firings of the plan before, to begin from, as far as their programs and pieces are still
   * there; those that are held again under their new terms.
   */
  static List<RealFiring> earlier(Ground ground) {
    List<RealFiring> firings = new ArrayList<>();
    for (PlannedFiring firing : ground.request().earlier()) {
      Optional<KilnProgram> program = ground.program(firing.kilnId(), firing.programId());
      Optional<PlannedFiring> held =
          ground.request().held().stream()
              .filter(other -> other.id().equals(firing.id()))
              .findFirst();
      boolean known =
          firing.portions().stream()
              .allMatch(
                  portion ->
                      portion.numbers().stream()
                          .allMatch(n -> ground.lotOf(portion.batchId(), n).isPresent()));
      if (program.isPresent() && known) {
        firings.add(
            new RealFiring(
                program.get(), times(ground, firing), going(ground, firing), firing.load(), held));
      }
    }
    return firings;
  }

  private static List<Going> going(Ground ground, PlannedFiring firing) {
    Map<Integer, TreeMap<Integer, Lot>> byLot = new TreeMap<>();
    for (Portion portion : firing.portions()) {
      for (int number : portion.numbers()) {
        Lot lot =
            ground
                .lotOf(portion.batchId(), number)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "The held firing "
                                + firing.id()
                                + " has pieces of batch "
                                + portion.batchId()
                                + " that are not on the list"));
        byLot.computeIfAbsent(lot.index(), any -> new TreeMap<>()).put(number, lot);
      }
    }
    return byLot.values().stream()
        .map(units -> new Going(units.firstEntry().getValue(), List.copyOf(units.keySet())))
        .toList();
  }
}
