package shelfful.ui.hand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;

/**
 * The judge's figures as text: a tenth of a millimetre, or two thousandths of an inch, which is as
 * near the judge's figure.
 */
public record FigureText(LengthUnit unit) {
  private static final BigDecimal MICROMETRES_PER_INCH = BigDecimal.valueOf(25_400);

  /** A length with its unit; a minus before what is below zero. */
  public String of(Length length) {
    BigDecimal micrometres = BigDecimal.valueOf(length.micrometres());
    return switch (unit) {
      case INCHES ->
          figure(micrometres.divide(MICROMETRES_PER_INCH, 3, RoundingMode.HALF_EVEN), "in");
      case CENTIMETRES -> figure(micrometres.movePointLeft(4), 2, "cm");
      case MILLIMETRES -> figure(micrometres.movePointLeft(3), 1, "mm");
    };
  }

  private static String figure(BigDecimal value, int decimals, String unit) {
    return figure(value.setScale(decimals, RoundingMode.HALF_EVEN), unit);
  }

  private static String figure(BigDecimal value, String unit) {
    String text = value.signum() == 0 ? value.abs().toPlainString() : value.toPlainString();
    return text.replace('-', '−') + " " + unit;
  }
}
