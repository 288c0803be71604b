package shelfful.drawing;

/** Text and figures as HTML that is well-formed XML as well. */
final class Markup {
  private Markup() {}

  /**
   * Any text as harmless text: no markup, no control or direction character, no half of a letter.
   * Letters of every language stay; the phone has typefaces of its own.
   */
  static String text(String any) {
    StringBuilder clean = new StringBuilder();
    any.codePoints().forEach(letter -> append(clean, letter));
    return clean.toString();
  }

  private static void append(StringBuilder clean, int letter) {
    if (Character.isWhitespace(letter)) {
      clean.append(' ');
      return;
    }
    switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          clean.append("");
      default -> escaped(clean, letter);
    }
  }

  private static void escaped(StringBuilder clean, int letter) {
    switch (letter) {
      case '&' -> clean.append("&amp;");
      case '<' -> clean.append("&lt;");
      case '>' -> clean.append("&gt;");
      case '"' -> clean.append("&quot;");
      case '\'' -> clean.append("&#39;");
      default -> clean.appendCodePoint(letter);
    }
  }

  /** A name that may run in any direction without turning what stands beside it. */
  static String name(String any) {
    return "<bdi>" + text(any) + "</bdi>";
  }

  /** An element with words in it. */
  static String element(String tag, String words) {
    return "<" + tag + ">" + name(words) + "</" + tag + ">\n";
  }

  /** Millimetres of a picture to so many decimals, as short as can be. */
  static String number(double millimetres, int decimals) {
    long scale = decimals == 1 ? 10 : decimals == 2 ? 100 : 1000;
    long whole = Math.round(Math.abs(millimetres) * scale);
    StringBuilder text = new StringBuilder(whole != 0 && millimetres < 0 ? "-" : "");
    text.append(whole / scale);
    long rest = whole % scale;
    if (rest > 0) {
      String digits = Long.toString(scale + rest).substring(1);
      text.append('.').append(digits.replaceFirst("0+$", ""));
    }
    return text.toString();
  }
}
