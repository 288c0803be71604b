package shelfful.ui.firings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.FiringFolder;
import shelfful.ui.Scenes;
import shelfful.ui.look.Settings;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class FiringsPaneTest {
  private final Words words = Words.english();
  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();

  @TempDir private Path folder;

  @Test
  void aNoteThatCannotBeReadIsTold() {
    FiringBook book =
        new FiringBook(words, tasks, new FiringFolder(folder), () -> LocalDate.of(2026, 6, 1));
    FiringsPane.Doors doors =
        new FiringsPane.Doors(
            () -> {},
            Optional::empty,
            () -> Optional.of(folder.resolve("gone.txt")),
            Optional::empty);
    try (Scenes window =
        Scenes.open(
            () -> new FiringsPane(words, book, new UnpackingViewModel(words, tasks, book), doors),
            Settings.usual(Locale.ROOT),
            1200,
            800)) {
      Button note =
          window.all(Button.class).stream()
              .filter(one -> one.getText().equals(words.of("firings.note")))
              .findFirst()
              .orElseThrow();
      window.run(note::fire);
    }
    assertThat(book.told().get()).contains("gone.txt").contains("cannot be read");
  }
}
