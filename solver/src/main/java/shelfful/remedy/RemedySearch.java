package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import shelfful.inspect.InspectedLoad;

/**
 * Looks for what would bring in each piece that waits in a load. Kinds of remedy are tried from the
 * cheapest to the dearest, and the next firing beside them; every remedy told was planned and
 * passed the judge. The same load and effort give the same answers. One thread at a time; {@link
 * #stop()} may be called from any.
 */
public final class RemedySearch {
  private final InspectedLoad load;
  private final RemedyEffort effort;
  private final List<WaitingGroup> groups;
  private final List<Attempt> attempts;
  private volatile WaitingCase current;
  private volatile boolean stopped;

  public RemedySearch(InspectedLoad load, RemedyEffort effort) {
    this.load = load;
    this.effort = effort;
    this.groups = WaitingGroup.of(load.load());
    this.attempts =
        List.of(
            new AsItStands(),
            new OtherPosts(),
            new WareMoved(),
            new OtherColumns(),
            new OthersWait(),
            new MustGoDropped(),
            new MoreFurniture(),
            new GapRelaxed(),
            new NextFiring(new NextFirings(load.load(), groups, effort)));
  }

  /** What waits, in groups of alike pieces, in the order of the list. */
  public List<WaitingGroup> groups() {
    return groups;
  }

  /** Ends the search soon; what was found is kept. */
  public void stop() {
    stopped = true;
    WaitingCase now = current;
    if (now != null) {
      now.plan().stop();
    }
  }

  /** Explains every group, telling each as soon as it is done. */
  public List<Explanation> explain(Consumer<Explanation> told) {
    List<Explanation> all = new ArrayList<>();
    for (WaitingGroup group : groups) {
      if (!stopped) {
        Explanation explanation = explain(group);
        all.add(explanation);
        told.accept(explanation);
      }
    }
    return List.copyOf(all);
  }

  /** Explains one group. */
  public Explanation explain(WaitingGroup group) {
    WaitingCase one = new WaitingCase(load, group, effort);
    current = one;
    List<Trial> trials = new ArrayList<>();
    boolean found = false;
    for (Attempt attempt : attempts) {
      boolean wanted = effort.everyKind() || !found || !attempt.kind().isInThisFiring();
      if (!stopped && wanted && attempt.mayHelp(one)) {
        Optional<Remedy> remedy = attempt.find(one);
        found |= remedy.isPresent();
        RemedyKind kind = remedy.map(Remedy::kind).orElse(attempt.kind());
        remedy.ifPresent(some -> trials.removeIf(trial -> trial.kind() == some.kind()));
        trials.add(new Trial(kind, remedy, one.takeTries(), one.takeWhy()));
      }
    }
    return new Explanation(group, trials);
  }
}
