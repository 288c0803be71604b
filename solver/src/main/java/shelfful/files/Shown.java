package shelfful.files;

/** Text from a file made short and harmless enough to stand in a sentence. */
final class Shown {
  private static final int LONGEST = 60;
  private static final int LONGEST_QUOTED = 40;

  private Shown() {}

  /** Without control, direction and half characters, and not too long. */
  static String text(String raw) {
    return shortened(raw, LONGEST);
  }

  /** The same between quotation marks. */
  static String quoted(String raw) {
    return "\"" + shortened(raw, LONGEST_QUOTED) + "\"";
  }

  private static String shortened(String raw, int longest) {
    // Cut first: a text of a megabyte needs no cleaning.
    boolean tooLong = raw.codePointCount(0, Math.min(raw.length(), 2 * longest + 2)) > longest;
    String start = tooLong ? raw.substring(0, raw.offsetByCodePoints(0, longest)) + "\u2026" : raw;
    return start.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Co}\u2028\u2029]", "\u25a1");
  }
}
