package shelfful.files;

import java.util.regex.Pattern;

/**
 * Keeps text from being run as a formula when a table of ours is opened in a spreadsheet
 * (CWE-1236): a cell that begins like one gets an apostrophe in front, which our reader takes off
 * again.
 */
final class FormulaGuard {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,18}(?:\\.[0-9]{1,18})?");

  private FormulaGuard() {}

  static boolean isTrigger(char first) {
    // The apostrophe itself is doubled, so that taking one off always gives the text back.
    return "=+-@\t\r\n'\0\uff1d\uff0b\uff0d\uff20".indexOf(first) >= 0;
  }

  /** The cell to write; numbers stay numbers. */
  static String guarded(String text) {
    boolean plain = text.isEmpty() || !isTrigger(text.charAt(0)) || NUMBER.matcher(text).matches();
    return plain ? text : "'" + text;
  }
}
