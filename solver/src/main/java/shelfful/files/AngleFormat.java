package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import shelfful.measure.Angle;
import shelfful.measure.TextReading;

/**
 * An angle: degrees anticlockwise, as a number with at most three decimals, up to a whole turn
 * either way.
 */
final class AngleFormat {
  private static final long FULL_TURN = 360_000;

  private AngleFormat() {}

  static TextReading<Angle> read(JsonNode node) {
    return FileNumber.thousandths(node)
        .then(
            thousandths ->
                Math.abs(thousandths) > FULL_TURN
                    ? FileNumber.refused(
                        node, "is out of range.", "An angle is from -360 to 360 degrees.")
                    : new TextReading.Understood<>(new Angle(thousandths.intValue())));
  }
}
