package shelfful.planning;

import java.util.Locale;
import java.util.regex.Pattern;
import shelfful.packing.Room;
import shelfful.packing.ShelfSpace;

/** A space as text, rounded far below the margin, so that like spaces are found to be like. */
final class SpaceText {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");

  private SpaceText() {}

  static String of(ShelfSpace space) {
    StringBuilder text = new StringBuilder();
    for (Room room : space.rooms()) {
      text.append(room.applies()).append(rounded(room.clearance()));
      room.region().bounds().stream()
          .map(bound -> rounded(bound.toString()))
          .sorted()
          .forEach(text::append);
    }
    space.obstacles().stream()
        .map(obstacle -> rounded(obstacle.toString()))
        .sorted()
        .forEach(text::append);
    return text.toString();
  }

  private static String rounded(double number) {
    String text = String.format(Locale.ROOT, "%.5f", number);
    return text.equals("-0.00000") ? "0.00000" : text;
  }

  /** Rounds every number within a record's text. */
  private static String rounded(String text) {
    return NUMBER.matcher(text).replaceAll(match -> rounded(Double.parseDouble(match.group())));
  }
}
