package shelfful.inspect;

import shelfful.load.Load;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** The same load with everything in the kiln turned by half a turn. */
final class TurnedLoad {
  private TurnedLoad() {}

  static Load of(Load load) {
    return new Moved(
            point -> new Point(Length.ZERO.minus(point.x()), Length.ZERO.minus(point.y())),
            TurnedLoad::half,
            (shelfId, turn) -> half(turn),
            form -> form)
        .of(load);
  }

  private static Angle half(Angle turn) {
    return new Angle(turn.millidegrees() + 180_000);
  }
}
