package shelfful.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shelfful.app.OpenAPlan;
import shelfful.app.Opened;
import shelfful.inspect.InspectedLoad;

/**
 * Plans of the three demo lists, kept as files so that the sheets are tested on them whatever the
 * planner finds today. Made by {@code shelfful plan … --steps 120 --day 2026-06-01}, the list of
 * 500 with {@code --kiln front}.
 */
final class DemoPlans {
  static final List<String> NAMES = List.of("list-60", "list-200", "list-500");

  private DemoPlans() {}

  static InspectedLoad of(String name) {
    String resource = name + ".plan.json";
    try (InputStream stream = DemoPlans.class.getResourceAsStream(resource)) {
      Path copy = Files.createTempFile(name, ".plan.json");
      try {
        Files.write(copy, stream.readAllBytes());
        if (OpenAPlan.open(copy) instanceof Opened.Ready<InspectedLoad> ready) {
          return ready.value();
        }
        throw new IllegalStateException(resource + " is refused; make it anew");
      } finally {
        Files.delete(copy);
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
