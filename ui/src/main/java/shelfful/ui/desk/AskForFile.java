package shelfful.ui.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import shelfful.ui.look.FileEnding;
import shelfful.ui.look.ReplaceQuestion;
import shelfful.ui.words.Words;

/**
 * Asks by the system's own windows.
 *
 * @param shower shows a file by its address
 */
record AskForFile(Words words, Window window, Consumer<String> shower) implements Places {

  @Override
  public Optional<Path> toOpen() {
    return ask("open", "*.json", "", chooser -> chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> forWork() {
    return save("saveWork", ".work.json");
  }

  @Override
  public Optional<Path> forPlan() {
    return save("savePlan", ".plan.json");
  }

  @Override
  public Optional<Path> forSheets() {
    return save("saveSheets", ".pdf");
  }

  @Override
  public Answer beforeLeaving(String sentence) {
    return new LeaveQuestion(words, window, sentence).answer();
  }

  private Optional<Path> save(String key, String ending) {
    return ask(
            key,
            "*" + ending,
            words.of("save.name") + ending,
            chooser -> chooser.showSaveDialog(window))
        .flatMap(new FileEnding(List.of(ending), new ReplaceQuestion(words, window))::complete);
  }

  private Optional<Path> ask(
      String key, String pattern, String name, Function<FileChooser, File> question) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(words.of(key + ".title"));
    chooser.setInitialFileName(name);
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(words.of(key + ".kind"), pattern));
    return Optional.ofNullable(question.apply(chooser)).map(File::toPath);
  }

  @Override
  public void show(Path file) {
    shower.accept(file.toUri().toString());
  }
}
