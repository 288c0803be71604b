package shelfful.ui.look;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import shelfful.drawing.PaperSize;
import shelfful.measure.LengthUnit;
import shelfful.ui.words.Language;

/**
 * How one person wants the desk. None of it is kept in a studio or a list, and opening somebody
 * else's files changes none of it.
 *
 * @param language of the words
 * @param unit lengths are shown and typed in
 * @param numbers the decimal sign
 * @param paper sheets are laid out for
 * @param theme light or dark
 * @param scale of letters and controls in percent, one of {@link #SCALES}
 */
public record Settings(
    Language language,
    LengthUnit unit,
    NumberStyle numbers,
    PaperSize paper,
    Theme theme,
    int scale) {
  public static final List<Integer> SCALES = List.of(100, 125, 150, 175, 200);

  /** Countries that use Letter paper and inches day by day (CLDR supplemental data, 44). */
  private static final Set<String> LETTER = Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE");

  private static final Set<String> INCHES = Set.of("US", "LR");

  /** Refuses a scale that is not offered. */
  public Settings {
    if (!SCALES.contains(scale)) {
      throw new IllegalArgumentException("The scale must be one of " + SCALES + ", not " + scale);
    }
  }

  /** What to begin with on a machine of this language and country. */
  public static Settings usual(Locale machine) {
    return new Settings(
        Language.nearest(machine),
        INCHES.contains(machine.getCountry()) ? LengthUnit.INCHES : LengthUnit.MILLIMETRES,
        NumberStyle.usual(machine),
        LETTER.contains(machine.getCountry()) ? PaperSize.LETTER : PaperSize.A4,
        Theme.LIGHT,
        SCALES.get(0));
  }

  public Settings with(Language other) {
    return new Settings(other, unit, numbers, paper, theme, scale);
  }

  public Settings with(LengthUnit other) {
    return new Settings(language, other, numbers, paper, theme, scale);
  }

  public Settings with(NumberStyle other) {
    return new Settings(language, unit, other, paper, theme, scale);
  }

  public Settings with(PaperSize other) {
    return new Settings(language, unit, numbers, other, theme, scale);
  }

  public Settings with(Theme other) {
    return new Settings(language, unit, numbers, paper, other, scale);
  }

  /** The same at another scale in percent. */
  public Settings with(int other) {
    return new Settings(language, unit, numbers, paper, theme, other);
  }
}
