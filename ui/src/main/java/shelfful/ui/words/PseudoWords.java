package shelfful.ui.words;

/**
 * Makes words a third longer and writes them with other letters, so that a window shows at a glance
 * what is cut short and what does not come from the language files.
 */
final class PseudoWords {
  private static final String PLAIN = "aeiouyAEIOUYcnsz";
  private static final String STRANGE = "àéîöüÿÀÉÎÖÜÝçñšž";
  private static final int EXTRA_SHARE = 3;

  private PseudoWords() {}

  /** A pattern with its places for things left as they are. */
  static String of(String pattern) {
    StringBuilder strange = new StringBuilder("[");
    int depth = 0;
    for (char letter : pattern.toCharArray()) {
      depth += letter == '{' ? 1 : 0;
      int at = depth == 0 ? PLAIN.indexOf(letter) : -1;
      strange.append(at < 0 ? letter : STRANGE.charAt(at));
      depth -= letter == '}' ? 1 : 0;
    }
    return strange.append("~".repeat(pattern.length() / EXTRA_SHARE)).append(']').toString();
  }
}
