package shelfful.files;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the sign between the cells of a table from its header, where no decimal comma can mislead.
 */
final class Delimiter {
  private static final List<Character> KNOWN = List.of(',', ';', '\t');

  /** A line that spreadsheets put before a table to name the sign, and hide on opening it. */
  private static final Pattern NAMED =
      Pattern.compile("\\A\"?sep=([,;\t])\"?(?=[\r\n])", Pattern.CASE_INSENSITIVE);

  private Delimiter() {}

  /** The text without such a line; its line break stays, so that the lines keep their numbers. */
  static String withoutNamed(String text) {
    return NAMED.matcher(text).replaceFirst("");
  }

  /** Whether the text names its sign, or a sign makes at least two known headings of its header. */
  static boolean isSure(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    return NAMED.matcher(text).find() || headings(first, of(text)) >= 2;
  }

  /** The sign that makes the most known headings of the first line; a comma if none does. */
  static char of(String text) {
    Matcher named = NAMED.matcher(text);
    if (named.find()) {
      return named.group(1).charAt(0);
    }
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    long most = 0;
    for (char sign : KNOWN) {
      long headings = headings(first, sign);
      if (headings > most) {
        most = headings;
        best = sign;
      }
    }
    return best;
  }

  private static long headings(String line, char sign) {
    // A header is short; a file without line breaks is not searched to its end.
    String start = line.substring(0, Math.min(line.length(), 4000));
    return Pattern.compile(Pattern.quote(String.valueOf(sign)))
        .splitAsStream(start)
        .map(cell -> cell.replace("\"", ""))
        .filter(cell -> BatchColumn.of(cell).isPresent())
        .count();
  }
}
