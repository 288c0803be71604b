package shelfful.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import shelfful.studio.Studio;

/** A small studio that every wrong one in the tests differs from in one thing. */
final class SmallStudio {
  static final Path FILE = Path.of("src/test/resources/shelfful/files/small-studio.json");
  static final Path DEMO = Path.of("../demo-data");

  private SmallStudio() {}

  static Studio studio() {
    return StudioReader.read(FILE).found().orElseThrow();
  }

  static Studio demo() {
    return StudioReader.read(DEMO.resolve("studio.json")).found().orElseThrow();
  }

  static String json() {
    try {
      return Files.readString(FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static ReadResult<Studio> read(String json) {
    return StudioReader.read("studio.json", json.getBytes(StandardCharsets.UTF_8));
  }
}
