package shelfful.remedy;

/**
 * How much is tried for one group of waiting pieces. All counts, so that the same load and effort
 * give the same remedies.
 *
 * @param steps of the search in each try
 * @param layers how many layers are freed, one after another
 * @param halvings how often the smallest relaxation is halved
 * @param everyKind whether dearer kinds are looked for after a cheaper one was found
 */
public record RemedyEffort(long steps, int layers, int halvings, boolean everyKind) {
  /** A handful of steps, four layers, stopping at the cheapest remedy. */
  public static final RemedyEffort USUAL = new RemedyEffort(6, 4, 5, false);

  /** Refuses negative counts. */
  public RemedyEffort {
    if (steps < 0 || layers < 0 || halvings < 0) {
      throw new IllegalArgumentException("An effort must not be negative");
    }
  }

  /** The same, looking for every kind of remedy. */
  public RemedyEffort ofEveryKind() {
    return new RemedyEffort(steps, layers, halvings, true);
  }
}
