package shelfful.schedule;

import java.util.List;
import java.util.Optional;
import shelfful.ware.FiringKind;
import shelfful.week.WareLine;

/**
 * Units that are alike in all that counts: pieces of one batch, or sets with a piece of each of the
 * same batches.
 *
 * @param index in the week
 * @param members the batches a unit has a piece of, in the order of the list
 * @param numbers of the units
 * @param bisque what goes into a bisque firing of a unit, if anything
 * @param glaze what goes into a glaze firing, if anything
 * @param bisqueReady when it can be bisqued, in minutes
 * @param glazeReady when it can be glaze fired at the earliest, whatever becomes of the bisque
 */
record Lot(
    int index,
    List<WareLine> members,
    List<Integer> numbers,
    Optional<UnitKind> bisque,
    Optional<UnitKind> glaze,
    long bisqueReady,
    long glazeReady) {
  Lot {
    members = List.copyOf(members);
    numbers = List.copyOf(numbers);
  }

  /** The batches of it that go into a firing of a kind. */
  List<WareLine> going(FiringKind kind) {
    return members.stream().filter(line -> line.needs().contains(kind)).toList();
  }

  /** What goes in of a unit. */
  Optional<UnitKind> kind(FiringKind kind) {
    return kind == FiringKind.BISQUE ? bisque : glaze;
  }
}
