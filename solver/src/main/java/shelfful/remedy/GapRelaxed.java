package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.load.RequestChange;
import shelfful.measure.Length;
import shelfful.studio.Studio;
import shelfful.ware.FiringKind;

/**
 * Keeps one distance less strictly, first by as much as is ever given up, and if that helps, by
 * less and less: the smallest relaxation that worked is told. It is an upper bound of the smallest
 * there is, for each try is a search that may miss a setting.
 */
final class GapRelaxed implements Attempt {
  /** Relaxations are told in whole tenths of a millimetre. */
  private static final long FINEST = 100;

  @Override
  public RemedyKind kind() {
    return RemedyKind.GAP_RELAXED;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return !relaxations(one).isEmpty();
  }

  private static List<Relaxation> relaxations(WaitingCase one) {
    boolean glazed = one.request().firing().kind() == FiringKind.GLAZE;
    return Relaxation.against(one.group().reason().reason()).stream()
        .filter(relaxation -> glazed || relaxation != Relaxation.GLAZED_TO_GLAZED)
        .filter(
            relaxation ->
                relaxation.most(one.request().studio().rules().clearances()).micrometres()
                    >= FINEST)
        .toList();
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    for (Relaxation relaxation : relaxations(one)) {
      for (Set<String> freed : freed(one)) {
        Length most = tenths(relaxation.most(one.request().studio().rules().clearances()));
        Optional<InspectedLoad> load = tried(one, relaxation, most, freed);
        if (load.isPresent()) {
          return Optional.of(smallest(one, relaxation, most, freed, load.get()));
        }
      }
    }
    return Optional.empty();
  }

  /** First nothing moves, then the likeliest layer is set anew. */
  private static List<Set<String>> freed(WaitingCase one) {
    List<Set<String>> freed = new ArrayList<>(List.of(Set.of()));
    new FreedLayers(one).inTurn().stream().limit(1).forEach(freed::add);
    return freed;
  }

  private static Optional<InspectedLoad> tried(
      WaitingCase one, Relaxation relaxation, Length less, Set<String> freed) {
    Studio relaxed = relaxation.by(one.request().studio(), less);
    LoadRequest wish = RequestChange.studio(one.request(), relaxed);
    return one.plan()
        .around(wish, id -> !freed.contains(id))
        .filter(load -> Change.between(one.load(), load.load()).losesNothing());
  }

  private static Remedy smallest(
      WaitingCase one,
      Relaxation relaxation,
      Length most,
      Set<String> freed,
      InspectedLoad withMost) {
    Length worked = most;
    Length failed = Length.ZERO;
    InspectedLoad best = withMost;
    for (int i = 0; i < one.effort().halvings(); i++) {
      Length middle = tenths(new Length((worked.micrometres() + failed.micrometres()) / 2));
      if (!middle.isLongerThan(failed) || !worked.isLongerThan(middle)) {
        break;
      }
      Optional<InspectedLoad> load = tried(one, relaxation, middle, freed);
      if (load.isPresent()) {
        worked = middle;
        best = load.get();
      } else {
        failed = middle;
      }
    }
    return remedy(one, relaxation, worked, best);
  }

  private static Length tenths(Length length) {
    return new Length(length.micrometres() / FINEST * FINEST);
  }

  private static Remedy remedy(
      WaitingCase one, Relaxation relaxation, Length less, InspectedLoad load) {
    Telling telling = new Telling(one, load);
    Length kept = relaxation.kept(one.request().studio().rules().clearances());
    String sentence =
        telling.goIn()
            + " on "
            + telling.where()
            + " when the distance "
            + relaxation.words()
            + " is kept "
            + telling.text(less)
            + " less strictly ("
            + telling.text(kept.minus(less))
            + " instead of "
            + telling.text(kept)
            + "); "
            + telling.moved()
            + ". A RISK: "
            + relaxation.risk()
            + ".";
    return new Remedy(
        RemedyKind.GAP_RELAXED,
        one.gained(load.load()),
        sentence,
        load,
        telling.change(),
        Optional.of(less));
  }
}
