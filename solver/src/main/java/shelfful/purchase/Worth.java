package shelfful.purchase;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a purchase is worth.
 *
 * @param purchase what is bought
 * @param piecesNow how many pieces a firing holds without it, on average
 * @param gain how many more it holds with it
 * @param savedPerMonth money, where firings a month and their cost were given
 */
public record Worth(Purchase purchase, double piecesNow, Gain gain, OptionalDouble savedPerMonth) {

  /** One line for people; claims nothing that is not beyond the noise. */
  public String sentence() {
    String interval =
        String.format(
            Locale.ROOT,
            "%+.1f pieces a firing (95 %% interval %+.1f to %+.1f)",
            gain.mean(),
            gain.low(),
            gain.high());
    if (!gain.isClear()) {
      return purchase.words() + ": no clear gain; " + interval;
    }
    return purchase.words()
        + ": "
        + interval
        + (savedPerMonth.isPresent()
            ? String.format(Locale.ROOT, "; saves about %.2f a month", savedPerMonth.getAsDouble())
            : "");
  }
}
