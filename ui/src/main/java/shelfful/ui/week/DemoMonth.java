package shelfful.ui.week;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import shelfful.app.KeepAWeek;
import shelfful.app.Opened;

/** The month of an invented pottery that comes with the program. */
final class DemoMonth {
  private static final String NAME = "month.json";

  private DemoMonth() {}

  static Opened<KeepAWeek.Week> open() {
    try (InputStream file = DemoMonth.class.getResourceAsStream("demo/" + NAME)) {
      return KeepAWeek.open(NAME, file.readAllBytes());
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
