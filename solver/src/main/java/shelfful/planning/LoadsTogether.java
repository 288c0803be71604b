package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.load.Load;
import shelfful.packing.Effort;

/**
 * Several loads bettered together: what is left of the ware that they share is tucked in shelf by
 * shelf. Begins with what a book knows of shelves, and writes there what is found.
 */
public final class LoadsTogether {
  /**
   * How hard the packer is asked to try. Shelves are nearly full already, where a hasty "no" is
   * wrong four times in ten.
   */
  private static final Effort EFFORT = new Effort(1, 6);

  private final ShelfBook book;
  private final BooleanSupplier stop;

  /**
   * Ready to better loads.
   *
   * @param book of the studio
   * @param stop asked between any two changes
   */
  public LoadsTogether(ShelfBook book, BooleanSupplier stop) {
    this.book = book;
    this.stop = stop;
  }

  /**
   * The loads made anew, each for its request, with less left between them by worth; empty where
   * nothing better was found, or a load would not stand as it is. Of a batch no more are in all of
   * them than there are, but which of its pieces are in which load means nothing, before as after.
   * Not inspected.
   *
   * @param loads as they are, each of a request with all that may go in; a batch that several may
   *     take of is on each of their lists, with the same id and quantity
   * @param effort how much is tried: 10,000 is about a second
   */
  public Optional<List<Load>> better(List<Load> loads, int effort, long seed) {
    List<PlanDesk> desks = new ArrayList<>();
    for (Load load : loads) {
      new LoadPlanner(load.request()).with(book).holding(load).ifPresent(desks::add);
    }
    if (desks.size() < loads.size()) {
      return Optional.empty();
    }
    SharedLots lots = new SharedLots(desks.stream().map(desk -> desk.judge().ware()).toList());
    List<LoadAtHand> atHand = new ArrayList<>();
    for (PlanDesk desk : desks) {
      desk.judge().answers().tryHarder(EFFORT);
      lots.take(atHand.size(), desk.best().placed());
      atHand.add(new LoadAtHand(atHand.size(), desk));
    }
    boolean better = new Tucking(atHand, lots, seed).run(effort, stop);
    desks.forEach(PlanDesk::writeDown);
    return better ? Optional.of(desks.stream().map(PlanDesk::asFound).toList()) : Optional.empty();
  }
}
