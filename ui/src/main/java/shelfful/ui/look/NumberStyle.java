package shelfful.ui.look;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** The decimal sign on the screen. Files always have a dot; reading takes either. */
public enum NumberStyle {
  DOT('.'),
  COMMA(',');

  private final char sign;

  NumberStyle(char sign) {
    this.sign = sign;
  }

  /** A plain number, written with a dot, in this style. */
  public String of(String dotted) {
    return dotted.replace('.', sign);
  }

  static NumberStyle usual(Locale machine) {
    return DecimalFormatSymbols.getInstance(machine).getDecimalSeparator() == ',' ? COMMA : DOT;
  }
}
