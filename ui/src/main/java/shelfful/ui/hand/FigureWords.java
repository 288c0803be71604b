package shelfful.ui.hand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import shelfful.edit.Tentative;
import shelfful.inspect.PlaceFigure;
import shelfful.measure.Length;
import shelfful.ui.words.Words;

/**
 * The judge's figures in words: a tenth of a millimetre, or two thousandths of an inch, which is as
 * near the judge's figure.
 */
record FigureWords(Words words, HandViewModel.Speech speech) {
  private static final BigDecimal MICROMETRES_PER_INCH = BigDecimal.valueOf(25_400);

  /** A length with its unit; a minus before what is below zero. */
  String length(Length length) {
    BigDecimal micrometres = BigDecimal.valueOf(length.micrometres());
    return switch (speech.unit()) {
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

  /** What the piece comes closest to breaking, or breaks, in a sentence. */
  String told(Tentative held) {
    return held.tightest()
        .map(
            figure ->
                words.of(
                    figure.holds() ? "hand.near" : "hand.forbidden",
                    what(figure),
                    length(figure.measured()),
                    length(figure.required()),
                    length(new Length(Math.abs(figure.spare().micrometres())))))
        .orElseGet(() -> words.of("hand.open"));
  }

  /** The figure alone: the distance where it is kept, and by how much it falls short where not. */
  String label(Tentative held) {
    return held.tightest()
        .map(
            figure ->
                figure.holds()
                    ? length(figure.measured())
                    : words.of("hand.short", length(figure.spare())))
        .orElse("");
  }

  private String what(PlaceFigure figure) {
    return words.of("hand.to." + figure.rule().id(), speech.nameOf(figure.other()));
  }
}
