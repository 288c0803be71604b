package shelfful.week;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * A kiln at work: when it may be tended and how it is fired.
 *
 * @param kilnId of the studio
 * @param calendar when it may be loaded and unpacked
 * @param kilowatts its connected power, from its name plate; empty when unknown
 * @param programs ways of firing it, ids unique
 */
public record KilnWork(
    String kilnId, KilnCalendar calendar, OptionalDouble kilowatts, List<Program> programs) {
  /** Takes its own copy; refuses programs that cannot be told apart and power out of range. */
  public KilnWork {
    programs = List.copyOf(programs);
    if (new TreeSet<>(programs.stream().map(Program::id).toList()).size() < programs.size()) {
      throw new IllegalArgumentException("Two programs of the kiln " + kilnId + " have one id");
    }
    if (kilowatts.isPresent()
        && !(kilowatts.getAsDouble() > 0 && kilowatts.getAsDouble() <= 2000)) {
      throw new IllegalArgumentException(
          "The power of the kiln " + kilnId + " must be more than 0 kW and at most 2000 kW");
    }
  }

  /** The program of this id. */
  public Optional<Program> program(String id) {
    return programs.stream().filter(program -> program.id().equals(id)).findFirst();
  }

  /** The same kiln with another calendar. */
  public KilnWork with(KilnCalendar other) {
    return new KilnWork(kilnId, other, kilowatts, programs);
  }
}
