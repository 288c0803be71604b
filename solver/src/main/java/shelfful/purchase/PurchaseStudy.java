package shelfful.purchase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.load.RequestChange;

/**
 * Measures what purchases are worth. Each list is planned once for each seed; from that load the
 * search goes on twice with the same seed and steps, once with the cupboard as it is and once with
 * the purchase in it, and the difference in pieces is taken. Both sides so have the same start and
 * the same effort, and a purchase is not credited with what mere longer searching brings. All loads
 * pass the judge. The same request and effort give the same figures.
 */
public final class PurchaseStudy {
  private final List<LoadRequest> lists;
  private final PurchaseEffort effort;
  private final List<List<Pair>> now = new ArrayList<>();
  private volatile boolean stopped;

  /**
   * Prepares a study.
   *
   * @param lists what is to be fired, one request for each list; at least one
   */
  public PurchaseStudy(List<LoadRequest> lists, PurchaseEffort effort) {
    if (lists.isEmpty()) {
      throw new IllegalArgumentException("A purchase is measured on at least one list");
    }
    this.lists = List.copyOf(lists);
    this.effort = effort;
  }

  /** Where a search begins, and how many pieces it ends with without any purchase. */
  private record Pair(InspectedLoad begin, int pieces) {}

  /** Ends the study after the purchase it is at; those not measured are left out. */
  public void stop() {
    stopped = true;
  }

  /**
   * Measures purchases.
   *
   * @param month what firings cost, where money is to be told
   * @param told of each as soon as it is measured
   * @return the most worth first
   */
  public List<Worth> measure(
      List<Purchase> purchases, Optional<MonthlyFirings> month, Consumer<Worth> told) {
    List<Worth> worths = new ArrayList<>();
    for (Purchase purchase : purchases) {
      if (!stopped) {
        Worth worth = worth(purchase, month);
        worths.add(worth);
        told.accept(worth);
      }
    }
    worths.sort(
        Comparator.comparing((Worth worth) -> -worth.gain().mean())
            .thenComparing(worth -> worth.purchase().words()));
    return List.copyOf(worths);
  }

  private Worth worth(Purchase purchase, Optional<MonthlyFirings> month) {
    if (now.isEmpty()) {
      lists.forEach(list -> now.add(asItIs(list)));
    }
    double[][] differences = new double[lists.size()][effort.seeds()];
    for (int list = 0; list < lists.size(); list++) {
      LoadRequest with = RequestChange.studio(lists.get(list), purchase.studio());
      for (int seed = 0; seed < effort.seeds(); seed++) {
        Pair pair = now.get(list).get(seed);
        differences[list][seed] = further(with, seed, pair.begin()) - pair.pieces();
      }
    }
    Gain gain = PairedGain.of(differences);
    double before = now.stream().flatMap(List::stream).mapToInt(Pair::pieces).average().orElse(0);
    OptionalDouble saved =
        month.isPresent()
            ? OptionalDouble.of(month.get().saved(before, gain.mean()))
            : OptionalDouble.empty();
    return new Worth(purchase, before, gain, saved);
  }

  private List<Pair> asItIs(LoadRequest list) {
    List<Pair> pairs = new ArrayList<>();
    for (int seed = 0; seed < effort.seeds(); seed++) {
      InspectedLoad begin = found(run(new PlanALoad(RequestChange.seed(list, list.seed() + seed))));
      pairs.add(new Pair(begin, further(list, seed, begin)));
    }
    return pairs;
  }

  private int further(LoadRequest list, int seed, InspectedLoad begin) {
    LoadRequest again = RequestChange.seed(list, list.seed() + seed + effort.seeds());
    return found(run(new PlanALoad(again).startFrom(begin, false))).load().placed();
  }

  /** No load at all is a fault of the program and says nothing of a purchase: it is no 0 pieces. */
  static InspectedLoad found(Optional<InspectedLoad> load) {
    return load.orElseThrow(() -> new IllegalStateException("The judge refused every load"));
  }

  private Optional<InspectedLoad> run(PlanALoad planning) {
    return planning.run(SearchLength.ofSteps(effort.steps()), PlanListener.none());
  }
}
