package shelfful.remedy;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import shelfful.inspect.InspectedLoad;

/** Of loads that bring a piece in and lose others, the one that loses and moves least. */
final class GivenUp {
  private static final Comparator<Loss> FEWEST_LOST =
      Comparator.comparingInt(Loss::lost).thenComparing(loss -> loss.change().moved());

  private GivenUp() {}

  private record Loss(InspectedLoad load, Change change, int lost) {}

  /**
   * The cheapest that loses something and whose losses are as wanted.
   *
   * @param wanted says of an id of a batch whether its pieces may be lost
   */
  static Optional<InspectedLoad> least(
      WaitingCase one, Stream<InspectedLoad> loads, Predicate<String> wanted) {
    return loads
        .map(load -> loss(one, load))
        .filter(loss -> loss.lost() > 0)
        .filter(loss -> loss.change().waiting().keySet().stream().allMatch(wanted))
        .min(FEWEST_LOST)
        .map(loss -> trimmed(one, loss, wanted).load());
  }

  /** One piece of the group in, and as many as can be of those that would have waited for more. */
  private static Loss trimmed(WaitingCase one, Loss loss, Predicate<String> wanted) {
    if (loss.lost() == 1 || one.gained(loss.load().load()) == 1) {
      return loss;
    }
    return one.plan()
        .withOneOnly(loss.load(), loss.change().waiting().keySet())
        .map(load -> loss(one, load))
        .filter(fewer -> fewer.lost() > 0 && fewer.lost() < loss.lost())
        .filter(fewer -> fewer.change().waiting().keySet().stream().allMatch(wanted))
        .orElse(loss);
  }

  private static Loss loss(WaitingCase one, InspectedLoad load) {
    Change change = Change.between(one.load(), load.load());
    int lost = change.waiting().values().stream().mapToInt(Integer::intValue).sum();
    return new Loss(load, change, lost);
  }

  static Remedy remedy(WaitingCase one, RemedyKind kind, InspectedLoad load) {
    Telling telling = new Telling(one, load);
    String sentence =
        telling.goIn()
            + " on "
            + telling.where()
            + " when "
            + telling.waiting()
            + (kind == RemedyKind.MUST_GO_DROPPED ? " no longer must go and" : "")
            + (telling.severalWait() ? " wait instead; " : " waits instead; ")
            + telling.moved()
            + ", "
            + telling.counts()
            + ".";
    return new Remedy(
        kind, one.gained(load.load()), sentence, load, telling.change(), Optional.empty());
  }
}
