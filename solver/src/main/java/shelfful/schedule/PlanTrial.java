package shelfful.schedule;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The same ware planned in every column plan of a kiln, each on its own. Were they planned in one
 * search, the one of which there is an earlier load to begin from would win whatever it is like.
 *
 * @param asked what was asked for
 * @param answers one for each column plan in which a load was found
 */
record PlanTrial(List<Asked> asked, List<LoadAnswer> answers) {
  private static final Comparator<Weighed> BY_WORTH =
      Comparator.comparingInt(Weighed::must).thenComparingLong(Weighed::worth);

  PlanTrial {
    asked = List.copyOf(asked);
    answers = List.copyOf(answers);
  }

  /** What goes in, as a load's own order of goals has it: first what must. */
  private record Weighed(LoadAnswer answer, int must, long worth) {
    static Weighed of(LoadAnswer answer, List<Asked> asked) {
      int must = 0;
      long worth = 0;
      for (Asked one : asked) {
        int in = answer.count(one.kind());
        int have = Math.min(in, one.must());
        int meant = Math.min(in - have, one.meant());
        must += have;
        worth += (long) one.weight() * (in + meant);
      }
      return new Weighed(answer, must, worth);
    }
  }

  private List<Weighed> weighed() {
    return answers.stream().map(answer -> Weighed.of(answer, asked)).toList();
  }

  /** The best of them, the first where several are; it refuses only what all of them refuse. */
  Optional<LoadAnswer> best() {
    Weighed best = null;
    for (Weighed one : weighed()) {
      best = best == null || BY_WORTH.compare(one, best) > 0 ? one : best;
    }
    return Optional.ofNullable(best).map(Weighed::answer).map(this::refusingWhatAllRefuse);
  }

  private LoadAnswer refusingWhatAllRefuse(LoadAnswer best) {
    Set<UnitKind> refused = new HashSet<>(best.refused());
    answers.forEach(answer -> refused.retainAll(answer.refused()));
    boolean room = best.leftForRoom() || refused.size() < best.refused().size();
    return new LoadAnswer(best.load(), best.placed(), refused, room);
  }

  /** By column plan, what went in as a share of the most. */
  Map<String, Double> shares() {
    List<Weighed> all = weighed();
    double most = Math.max(1, all.stream().mapToLong(Weighed::worth).max().orElse(1));
    Map<String, Double> shares = new HashMap<>();
    all.forEach(one -> shares.put(one.answer().load().columnPlanId(), one.worth() / most));
    return shares;
  }
}
