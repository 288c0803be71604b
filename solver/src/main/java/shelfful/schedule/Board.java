package shelfful.schedule;

import java.util.List;

/**
 * All that stays as it is during one search.
 *
 * @param clock of the week
 * @param shares to be given turns
 * @param turns to be given programs
 * @param programs of all kilns
 * @param tables of the kilns, with what is busy already
 * @param held turns whose program and time are given; the track after the kilns
 * @param goesIn how much goes into a firing by program
 * @param glazing minutes from unpacking the bisque until the ware can be glaze fired
 * @param orders how many orders asked to go together
 * @param byWanted the shares by what is wanted first
 * @param table the figures of the shares
 */
record Board(
    MinuteClock clock,
    List<Share> shares,
    List<Turn> turns,
    List<KilnProgram> programs,
    List<Timetable> tables,
    List<HeldTurn> held,
    List<Integer> goesIn,
    long glazing,
    int orders,
    List<Share> byWanted,
    ShareTable table) {
  Board {
    shares = List.copyOf(shares);
    turns = List.copyOf(turns);
    programs = List.copyOf(programs);
    tables = List.copyOf(tables);
    held = List.copyOf(held);
    goesIn = List.copyOf(goesIn);
    byWanted = List.copyOf(byWanted);
  }

  boolean isHeld(Turn turn) {
    return turn.track() >= tables.size();
  }

  HeldTurn held(Turn turn) {
    return held.get(turn.track() - tables.size());
  }

  int tracks() {
    return tables.size() + held.size();
  }

  /** The programs of one kiln. */
  List<KilnProgram> programsOf(int kiln) {
    return programs.stream().filter(program -> program.kiln() == kiln).toList();
  }
}
