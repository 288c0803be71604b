package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Makes any text safe to print in one cut and size, and fits it into a width. */
final class Wording {
  /** Stands for every letter the typeface lacks: a visible box, not a gap. */
  static final int BOX = 0x25AF;

  /** A space that lines are not broken at. */
  static final char TIED = '\u00a0';

  private static final Pattern SPACES = Pattern.compile(" {2,}");
  private static final String ELLIPSIS = "…";

  private final Typeface face;
  private final double size;

  Wording(Weight weight, double size) {
    this.face = Typeface.of(weight);
    this.size = size;
  }

  double width(String words) {
    return face.width(words, size);
  }

  /**
   * The text without control characters, direction overrides and other invisible signs, with line
   * breaks and tabs as spaces, and with a box for each letter the typeface lacks.
   */
  String clean(String text) {
    StringBuilder cleaned = new StringBuilder();
    text.codePoints().forEach(codePoint -> append(cleaned, codePoint));
    return SPACES.matcher(cleaned).replaceAll(" ").strip();
  }

  private void append(StringBuilder cleaned, int codePoint) {
    if (codePoint == TIED) {
      cleaned.append(TIED);
    } else if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
      cleaned.append(' ');
    } else if (isPrinted(codePoint)) {
      cleaned.appendCodePoint(face.has(codePoint) ? codePoint : BOX);
    }
  }

  private static boolean isPrinted(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE -> false;
      default -> true;
    };
  }

  /** The cleaned text, shortened with an ellipsis where it is wider than so many millimetres. */
  String fit(String text, double most) {
    String whole = clean(text);
    if (width(whole) <= most) {
      return whole;
    }
    int[] letters = whole.codePoints().toArray();
    int kept = letters.length;
    while (kept > 0 && width(new String(letters, 0, kept).stripTrailing() + ELLIPSIS) > most) {
      kept--;
    }
    return kept == 0 ? "" : new String(letters, 0, kept).stripTrailing() + ELLIPSIS;
  }

  /**
   * The cleaned text in lines no wider than so many millimetres, broken between words where there
   * are any.
   */
  List<String> wrap(String text, double most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : clean(text).split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer) <= most) {
        line = longer;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = fit(word, most);
      }
    }
    lines.add(line);
    return lines;
  }
}
