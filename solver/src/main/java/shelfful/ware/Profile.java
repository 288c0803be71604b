package shelfful.ware;

import java.util.List;
import shelfful.measure.Length;

/**
 * The shape of a form as far as a setting cares: what stands on the shelf and what it covers at
 * which height.
 *
 * @param foot what stands on the shelf; lies within the lowest band
 * @param height from the shelf to the highest point, without a lid
 * @param bands outlines by height, lowest first, touching each other from 0 to the height
 * @param lugs what sticks out of the bands
 */
public record Profile(Outline foot, Length height, List<Band> bands, List<Lug> lugs) {
  /** Refuses bands that leave a height out or go past it, and lugs above the height. */
  public Profile {
    bands = List.copyOf(bands);
    lugs = List.copyOf(lugs);
    requireBandsFillTheHeight(height, bands);
    for (Lug lug : lugs) {
      if (lug.to().isLongerThan(height)) {
        throw new IllegalArgumentException(
            "The lug " + lug.name() + " ends at " + lug.to() + ", above the form's " + height);
      }
    }
  }

  /** A form with one outline from the shelf to its full height. */
  public static Profile upright(Outline foot, Outline body, Length height, List<Lug> lugs) {
    return new Profile(foot, height, List.of(new Band(body, Length.ZERO, height)), lugs);
  }

  private static void requireBandsFillTheHeight(Length height, List<Band> bands) {
    Length reached = Length.ZERO;
    for (Band band : bands) {
      if (!band.from().equals(reached)) {
        throw new IllegalArgumentException(
            "Bands must touch: one starts at "
                + band.from()
                + ", the one below ends at "
                + reached);
      }
      reached = band.to();
    }
    if (!reached.equals(height)) {
      throw new IllegalArgumentException(
          "Bands must fill the height: they end at " + reached + ", the form at " + height);
    }
  }

  Profile scaledUp(double factor) {
    return new Profile(
        foot.scaledUp(factor),
        height.scaledUp(factor),
        bands.stream().map(band -> band.scaledUp(factor)).toList(),
        lugs.stream().map(lug -> lug.scaledUp(factor)).toList());
  }
}
