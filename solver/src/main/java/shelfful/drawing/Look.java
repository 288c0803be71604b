package shelfful.drawing;

import java.util.Optional;

/**
 * How a closed shape is painted: filled first, then outlined.
 *
 * @param outline its line, or empty for none
 * @param fill its colour, or empty to let what lies under it show
 */
public record Look(Optional<Pen> outline, Optional<Ink> fill) {
  static Look outlined(Pen pen) {
    return new Look(Optional.of(pen), Optional.empty());
  }

  static Look filled(Ink ink) {
    return new Look(Optional.empty(), Optional.of(ink));
  }

  static Look of(Pen pen, Ink ink) {
    return new Look(Optional.of(pen), Optional.of(ink));
  }
}
