package shelfful.packing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import shelfful.geometry.Extent;
import shelfful.geometry.Tolerance;

/**
 * Proofs that a question has no setting, cheap enough to be tried first: one body alone too large,
 * two that cannot both stand, too much area, too many points at mutual distance ({@link
 * PackingBound} has the theorems).
 */
final class EarlyRefusal {
  private final Extents extents;

  EarlyRefusal(Extents extents) {
    this.extents = extents;
  }

  Optional<Cause> of(ShelfQuestion question) {
    int[] asked =
        IntStream.range(0, question.kinds().size()).filter(k -> question.count(k) > 0).toArray();
    List<BodyKind> kinds = IntStream.of(asked).mapToObj(question.kinds()::get).toList();
    List<Slice> slices = Slice.all(FixedBodies.asObstacles(question), kinds, extents);
    Question present = new Question(question, asked);
    for (Slice slice : slices) {
      Optional<Cause> cause = single(slice).or(() -> pairwise(slice, present));
      if (cause.isPresent()) {
        return cause;
      }
    }
    for (AreaBudget budget : PackingBound.areaBudgets(slices, present.clearances())) {
      if (Tolerance.clearlyExceeds(budget.taken(present.counts()), budget.room())) {
        return Optional.of(Cause.AREA);
      }
    }
    return slices.stream().anyMatch(slice -> tooMany(slice, present))
        ? Optional.of(Cause.BOUND)
        : Optional.empty();
  }

  /** The question seen by the kinds that it asks for at least one of. */
  private record Question(ShelfQuestion whole, int[] asked) {
    int count(Slice.Section section) {
      return whole.count(asked[section.kind()]);
    }

    double apart(Slice.Section a, Slice.Section b) {
      return a.inner() + b.inner() + whole.required(asked[a.kind()], asked[b.kind()]);
    }

    int[] counts() {
      return IntStream.of(asked).map(whole::count).toArray();
    }

    double[][] clearances() {
      double[][] all = whole.clearance();
      double[][] table = new double[asked.length][asked.length];
      for (int i = 0; i < asked.length; i++) {
        for (int j = 0; j < asked.length; j++) {
          table[i][j] = all[asked[i]][asked[j]];
        }
      }
      return table;
    }
  }

  private static Optional<Cause> single(Slice slice) {
    boolean none =
        slice.sections.stream()
            .anyMatch(section -> slice.places(List.of(section)).empty() || slice.tooLong(section));
    return none ? Optional.of(Cause.TOO_LARGE) : Optional.empty();
  }

  private static Optional<Cause> pairwise(Slice slice, Question present) {
    for (int i = 0; i < slice.sections.size(); i++) {
      Slice.Section a = slice.sections.get(i);
      for (int j = present.count(a) > 1 ? i : i + 1; j < slice.sections.size(); j++) {
        Slice.Section b = slice.sections.get(j);
        double across = slice.places(List.of(a, b)).diameter();
        if (Tolerance.clearlyExceeds(present.apart(a, b), across)) {
          return Optional.of(Cause.PAIRWISE);
        }
      }
    }
    return Optional.empty();
  }

  /** Groemer and Oler's bound for the largest kind, the two largest, and so on. */
  private static boolean tooMany(Slice slice, Question present) {
    double least = Double.POSITIVE_INFINITY;
    int bodies = 0;
    for (int i = 0; i < slice.sections.size(); i++) {
      Slice.Section added = slice.sections.get(i);
      bodies += present.count(added);
      for (int j = 0; j <= i; j++) {
        if (j < i || present.count(added) > 1) {
          least = Math.min(least, present.apart(added, slice.sections.get(j)));
        }
      }
      if (bodies > 1) {
        Extent places = slice.places(slice.sections.subList(0, i + 1));
        double most = PackingBound.oler(places.area(), places.perimeter(), least);
        if (Tolerance.clearlyExceeds(bodies, most)) {
          return true;
        }
      }
    }
    return false;
  }
}
