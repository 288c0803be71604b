package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/**
 * Loads a kiln as a sensible person does (common practice, no source): must-go pieces first, equal
 * heights together, each shelf in staggered rows from the back, a layer as high as its tallest
 * piece needs, the next shelf when one is full. Nothing is moved once it stands.
 *
 * <p>Something to measure planning against, under the same rules.
 */
public final class HandLoader {
  private HandLoader() {}

  /** The best that any of five habits makes of any column plan; a person tries one. */
  public static Load best(LoadRequest request) {
    HandStack best = null;
    for (SketchJudge judge : judges(request)) {
      for (Comparator<Lot> habit : habits(judge)) {
        List<Lot> lots = new ArrayList<>(judge.ware().lots());
        lots.sort(Comparator.comparing(Lot::mustGo).reversed().thenComparing(habit));
        HandStack stack = new HandStack(judge, lots);
        stack.load();
        if (best == null || stack.merit().compareTo(best.merit()) > 0) {
          best = stack;
        }
      }
    }
    return best.asLoad();
  }

  /** Orders in which ware is taken up after the must-go pieces. */
  private static List<Comparator<Lot>> habits(SketchJudge judge) {
    Comparator<Lot> tallest = Comparator.comparingLong(Lot::height).reversed();
    Comparator<Lot> flattest = Comparator.comparingLong(Lot::height);
    Comparator<Lot> dearest = Comparator.comparingLong(Lot::worth).reversed();
    Map<Long, Integer> ofClass = new HashMap<>();
    for (Lot lot : judge.ware().lots()) {
      ofClass.merge(heightClass(judge.stand(), lot.height()), lot.size(), Integer::sum);
    }
    Comparator<Lot> largestGroup =
        Comparator.comparingInt(
            (Lot lot) -> -ofClass.get(heightClass(judge.stand(), lot.height())));
    return List.of(
        tallest,
        flattest,
        largestGroup.thenComparing(tallest),
        dearest.thenComparing(tallest),
        dearest.thenComparing(largestGroup).thenComparing(tallest));
  }

  /** The tallest that goes under the lowest posts that a piece of some height needs. */
  static long heightClass(Stand stand, long height) {
    long least = Math.max(height + stand.headroom(), stand.leastLayer());
    return stand.cupboard().lengths().stream()
        .mapToLong(PostLength::height)
        .filter(posts -> posts >= least)
        .map(posts -> posts - stand.headroom())
        .findFirst()
        .orElse(height);
  }

  /** What the rules say of sketches, for every column plan that may be used. */
  static List<SketchJudge> judges(LoadRequest request) {
    Kiln kiln = request.kiln();
    List<Stand> stands = new ArrayList<>();
    for (ColumnPlan plan : kiln.columnPlans()) {
      if (request.columnPlanId().map(plan.id()::equals).orElse(true)) {
        stands.add(new Stand(request, plan));
      }
    }
    Impossible impossible = new Impossible(request, stands);
    ReadyWare ware = new LotSorter(request).sort(impossible::refuses);
    return stands.stream().map(stand -> judge(stand, ware)).toList();
  }

  /** What the rules say of sketches on one column plan. */
  static SketchJudge judge(Stand stand, ReadyWare ware) {
    PairGaps gaps = new PairGaps(stand.request());
    ShelfSpaces spaces =
        new ShelfSpaces(stand, gaps.widest(ware.kinds()), stand.cupboard().widest());
    ShelfAnswers answers =
        new ShelfAnswers(ware, gaps.between(ware.kinds()), stand.request().seed(), () -> false);
    return new SketchJudge(stand, ware, spaces, answers);
  }
}
