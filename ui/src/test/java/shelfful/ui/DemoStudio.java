package shelfful.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import shelfful.app.KeepAStudio;
import shelfful.app.Opened;
import shelfful.studio.Studio;

/** The studio of the demo. */
public final class DemoStudio {
  public static final Path FILE = Path.of("..", "demo-data", "studio.json");

  private DemoStudio() {}

  public static Studio studio() {
    try {
      Opened<Studio> opened = KeepAStudio.open("studio.json", Files.readAllBytes(FILE));
      return ((Opened.Ready<Studio>) opened).value();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
