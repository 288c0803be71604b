package shelfful.packing;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Does this multiset of bodies fit on this shelf?
 *
 * @param space where they may stand
 * @param kinds the kinds asked about
 * @param counts how many of each kind, at least 0
 * @param clearance least gap between a body of kind i and one of kind j, symmetric, at least 0, mm;
 *     both bodies' tolerances are added
 * @param fixed bodies that already stand and stay where they are; those asked about keep clear of
 *     them, they are in no count and in no answer, and how they stand among themselves is not
 *     judged
 */
public record ShelfQuestion(
    ShelfSpace space,
    List<BodyKind> kinds,
    int[] counts,
    double[][] clearance,
    List<Placed> fixed) {
  /** Copies everything; refuses tables and fixed bodies that do not match the kinds. */
  public ShelfQuestion {
    Objects.requireNonNull(space, "space");
    kinds = List.copyOf(kinds);
    counts = counts.clone();
    clearance = copy(clearance);
    fixed = List.copyOf(fixed);
    check(kinds.size(), counts, clearance);
    for (Placed body : fixed) {
      if (body.kind() >= kinds.size()) {
        throw new IllegalArgumentException("no kind " + body.kind() + " for a fixed body");
      }
    }
  }

  /** A question about an empty shelf. */
  public ShelfQuestion(ShelfSpace space, List<BodyKind> kinds, int[] counts, double[][] clearance) {
    this(space, kinds, counts, clearance, List.of());
  }

  /** A question with one clearance between all kinds. */
  public static ShelfQuestion of(
      ShelfSpace space, List<BodyKind> kinds, int[] counts, double clearance) {
    double[][] table = new double[kinds.size()][kinds.size()];
    for (double[] row : table) {
      Arrays.fill(row, clearance);
    }
    return new ShelfQuestion(space, kinds, counts, table);
  }

  @Override
  public int[] counts() {
    return counts.clone();
  }

  @Override
  public double[][] clearance() {
    return copy(clearance);
  }

  /** How many bodies are asked about, in all. */
  public int bodies() {
    return Arrays.stream(counts).sum();
  }

  /** How many bodies of a kind. */
  public int count(int kind) {
    return counts[kind];
  }

  /** The gap that a body of kind i must keep from one of kind j, both tolerances included, mm. */
  public double required(int i, int j) {
    return clearance[i][j] + kinds.get(i).tolerance() + kinds.get(j).tolerance();
  }

  private static double[][] copy(double[][] table) {
    double[][] copy = new double[table.length][];
    for (int i = 0; i < table.length; i++) {
      copy[i] = table[i].clone();
    }
    return copy;
  }

  private static void check(int kinds, int[] counts, double[][] clearance) {
    if (counts.length != kinds || clearance.length != kinds) {
      throw new IllegalArgumentException(
          kinds
              + " kinds need as many counts and clearance rows, but there are "
              + counts.length
              + " and "
              + clearance.length);
    }
    for (int i = 0; i < kinds; i++) {
      if (counts[i] < 0) {
        throw new IllegalArgumentException("count of kind " + i + " is " + counts[i]);
      }
      if (clearance[i].length != kinds) {
        throw new IllegalArgumentException(
            "clearance row " + i + " has " + clearance[i].length + " entries, not " + kinds);
      }
    }
    for (int i = 0; i < kinds; i++) {
      for (int j = 0; j <= i; j++) {
        double gap = clearance[i][j];
        if (!(gap >= 0) || Double.isInfinite(gap) || gap != clearance[j][i]) {
          throw new IllegalArgumentException(
              "clearance of kinds "
                  + i
                  + " and "
                  + j
                  + " must be one figure of at least 0 mm, but is "
                  + gap
                  + " and "
                  + clearance[j][i]);
        }
      }
    }
  }
}
