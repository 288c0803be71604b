package shelfful.calendar;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Folds the lines of a calendar file so that none is longer than 75 octets (RFC 5545, 3.1). The
 * library folds by characters, and a character can be four octets.
 */
final class FoldedLines {
  private static final int LONGEST = 75;
  private static final String BREAK = "\r\n";

  private FoldedLines() {}

  /** The text in UTF-8, whatever folds it had before. */
  static byte[] bytes(String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (String line : text.replace(BREAK + " ", "").replace(BREAK + "\t", "").split(BREAK)) {
      int length = 0;
      for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
        byte[] letter = Character.toString(line.codePointAt(at)).getBytes(StandardCharsets.UTF_8);
        if (length + letter.length > LONGEST) {
          out.writeBytes((BREAK + " ").getBytes(StandardCharsets.UTF_8));
          length = 1;
        }
        out.writeBytes(letter);
        length += letter.length;
      }
      out.writeBytes(BREAK.getBytes(StandardCharsets.UTF_8));
    }
    return out.toByteArray();
  }
}
