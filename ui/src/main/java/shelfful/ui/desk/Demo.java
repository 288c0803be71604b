package shelfful.ui.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import shelfful.app.KeepAStudio;
import shelfful.app.OpenAList;
import shelfful.app.Opened;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;

/** The invented pottery that comes with the program. */
final class Demo {
  /** The day its due dates are made for. */
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

  private Demo() {}

  static Opened<LoadRequest> request() {
    return OpenAList.open(document("studio.json"), document("list-60.csv"), DAY);
  }

  /** The studio of the invented pottery. */
  static Studio studio() {
    OpenAList.Document file = document("studio.json");
    return ((Opened.Ready<Studio>) KeepAStudio.open(file.name(), file.bytes())).value();
  }

  private static OpenAList.Document document(String name) {
    try (InputStream file = Demo.class.getResourceAsStream("demo/" + name)) {
      return new OpenAList.Document(name, file.readAllBytes());
    } catch (IOException fault) {
      throw new UncheckedIOException("The demo cannot be read", fault);
    }
  }
}
