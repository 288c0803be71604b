package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * Several loads bettered together: what is left of the ware that they share is tucked in shelf by
 * shelf. Begins with what a book knows of shelves, and writes there what is found.
 */
public final class LoadsTogether {
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
   * One of the loads.
   *
   * @param request with all that may go in; a batch that several loads may take of is on each of
   *     their lists, with the same id and quantity, and its pieces are any of them
   * @param load of that request as it is now; no piece of a batch is in two
   */
  public record Part(LoadRequest request, Load load) {}

  /**
   * The loads made anew, each for its request, with less left between them by worth; empty where
   * nothing better was found, or a load would not stand as it is. Of a batch no more are in all of
   * them than there are, but which of its pieces are in which load means nothing any more. Not
   * inspected.
   *
   * @param effort how much is tried, by {@link Tucking}
   */
  public Optional<List<Load>> better(List<Part> parts, int effort, long seed) {
    List<PlanDesk> desks = new ArrayList<>();
    for (Part part : parts) {
      new LoadPlanner(part.request()).with(book).holding(part.load()).ifPresent(desks::add);
    }
    if (desks.size() < parts.size()) {
      return Optional.empty();
    }
    SharedLots lots = new SharedLots(desks.stream().map(desk -> desk.judge().ware()).toList());
    List<LoadAtHand> loads = new ArrayList<>();
    for (PlanDesk desk : desks) {
      lots.take(loads.size(), desk.best().placed());
      loads.add(new LoadAtHand(loads.size(), desk));
    }
    boolean better = new Tucking(loads, lots, seed).run(effort, stop);
    desks.forEach(PlanDesk::writeDown);
    return better ? Optional.of(desks.stream().map(PlanDesk::asFound).toList()) : Optional.empty();
  }
}
