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
  private final Runs runs = new Runs();

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
            new NextFiring(new NextFirings(load.load(), groups, effort, runs)));
  }

  /** What waits, in groups of alike pieces, in the order of the list. */
  public List<WaitingGroup> groups() {
    return groups;
  }

  /** Ends the search soon; what was found is kept. */
  public void stop() {
    runs.stop();
  }

  /** Explains every group, telling each as soon as it is done. */
  public List<Explanation> explain(Consumer<Explanation> told) {
    List<Explanation> all = new ArrayList<>();
    for (WaitingGroup group : groups) {
      if (!runs.isStopped()) {
        Explanation explanation = explain(group);
        all.add(explanation);
        told.accept(explanation);
      }
    }
    return List.copyOf(all);
  }

  /** Explains one group; what was cut short is not told as tried. */
  public Explanation explain(WaitingGroup group) {
    WaitingCase one = new WaitingCase(load, group, effort, runs);
    List<Trial> trials = new ArrayList<>();
    boolean found = false;
    boolean cutShort = false;
    for (Attempt attempt : attempts) {
      boolean wanted = effort.everyKind() || !found || !attempt.kind().isInThisFiring();
      if (wanted && attempt.mayHelp(one)) {
        Optional<Remedy> remedy = runs.isStopped() ? Optional.empty() : attempt.find(one);
        found |= remedy.isPresent();
        if (remedy.isPresent() || !runs.isStopped()) {
          trials.add(new Trial(attempt.kind(), remedy, one.takeTries(), one.takeWhy()));
        } else {
          cutShort = true;
        }
      }
    }
    return new Explanation(group, trials, cutShort);
  }
}
