package shelfful.files;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Finds the sign between the cells of a table from its header, where no decimal comma can mislead.
 */
final class Delimiter {
  private static final List<Character> KNOWN = List.of(',', ';', '\t');

  private Delimiter() {}

  /** The sign that makes the most known headings of the first line; a comma if none does. */
  static char of(String text) {
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
