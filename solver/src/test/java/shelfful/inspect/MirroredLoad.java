package shelfful.inspect;

import java.util.List;
import shelfful.load.Load;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Form;
import shelfful.ware.Lug;
import shelfful.ware.Profile;

/** The same load with left and right exchanged: kiln, shelves, forms and where they stand. */
final class MirroredLoad {
  private MirroredLoad() {}

  static Load of(Load load) {
    return new Moved(
            point -> new Point(Length.ZERO.minus(point.x()), point.y()),
            turn -> new Angle(-turn.millidegrees()),
            MirroredLoad::shelf,
            MirroredLoad::form)
        .of(load);
  }

  /**
   * A quarter in a mirror is a quarter turned by 90°; every other shelf of the fixtures is its own
   * mirror image.
   */
  private static Angle shelf(String shelfId, Angle turn) {
    int own = shelfId.equals("quarter") ? 90_000 : 0;
    return new Angle(own - turn.millidegrees());
  }

  private static Form form(Form old) {
    Profile profile = old.profile();
    List<Lug> lugs =
        profile.lugs().stream()
            .map(
                lug ->
                    new Lug(
                        lug.name(),
                        new Angle(180_000 - lug.direction().millidegrees()),
                        lug.reach(),
                        lug.width(),
                        lug.from(),
                        lug.to()))
            .toList();
    return new Form(
        old.id(),
        old.name(),
        old.measuredAt(),
        old.shrinkage(),
        new Profile(profile.foot(), profile.height(), profile.bands(), lugs),
        old.lid(),
        old.mass(),
        old.tolerance(),
        old.bareFoot(),
        old.bisque());
  }
}
