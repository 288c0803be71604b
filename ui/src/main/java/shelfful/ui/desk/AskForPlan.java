package shelfful.ui.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import shelfful.ui.words.Words;

/** Asks which plan to open; empty when nobody wants to open one after all. */
record AskForPlan(Words words, Window window) implements Supplier<Optional<Path>> {

  @Override
  public Optional<Path> get() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(words.of("open.title"));
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(words.of("open.kind"), "*.json"));
    return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
  }
}
