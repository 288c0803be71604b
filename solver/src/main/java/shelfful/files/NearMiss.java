package shelfful.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a mistyped one was meant to be. */
final class NearMiss {
  private static final int LONGEST = 60;

  private NearMiss() {}

  /**
   * The nearest known word, if at most a third of its letters differ (edit distance, case not
   * counted).
   */
  static Optional<String> of(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = typed.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(
            word ->
                distance(plain, word.toLowerCase(Locale.ROOT)) <= Math.max(1, word.length() / 3))
        .min(
            Comparator.<String>comparingInt(word -> distance(plain, word.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** A sentence that asks whether it was meant, or else names what there is. */
  static String advice(String typed, Collection<String> known) {
    return of(typed, known)
        .map(word -> "Did you mean " + Shown.quoted(word) + "?")
        .orElseGet(() -> listed(known));
  }

  private static String listed(Collection<String> known) {
    if (known.isEmpty()) {
      return "There is none to choose from.";
    }
    int most = 12;
    String some = String.join(", ", known.stream().limit(most).map(Shown::text).toList());
    return known.size() > most ? "There are " + some + " and more." : "Use one of: " + some + ".";
  }

  /** Levenshtein's edit distance, a row at a time. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
