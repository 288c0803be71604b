package shelfful.files;

import java.util.Optional;
import shelfful.load.Rest;
import shelfful.measure.Length;
import shelfful.ware.PileWay;

/**
 * What carries a piece that does not stand upright on its shelf. How high it is lifted is not
 * written here: the piece's own height and that of its layer say it.
 */
final class RestFormat {
  private RestFormat() {}

  /**
   * A rest without its lift.
   *
   * @param on the piece that carries it, if one does
   */
  record Read(Optional<String> on, Optional<PileWay> way, boolean upsideDown) {
    static final Read PLAIN = new Read(Optional.empty(), Optional.empty(), false);

    Rest lifted(Length lift) {
      return new Rest(on, way, lift, upsideDown);
    }
  }

  static Optional<Read> read(FieldReader fields) {
    Optional<String> on = fields.has("on") ? Optional.of(fields.name("on")) : Optional.empty();
    Optional<PileWay> way = fields.optionalChoice("way", PileWay.class);
    boolean upsideDown = fields.flag("upsideDown", false);
    if (fields.isStillGood() && on.isPresent() != way.isPresent()) {
      String missing = on.isPresent() ? "way" : "on";
      fields.fault(
          missing,
          "A piece that rests on another says on which and how; one of the two is missing.",
          "Add " + Shown.quoted(missing) + ", or leave both out.");
    }
    return fields.make(() -> new Read(on, way, upsideDown));
  }

  static void write(Rest rest, FieldWriter fields) {
    fields.text("on", rest.on());
    rest.way().ifPresent(way -> fields.word("way", way));
    if (rest.upsideDown()) {
      fields.flag("upsideDown", true);
    }
  }
}
