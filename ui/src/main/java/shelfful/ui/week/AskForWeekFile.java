package shelfful.ui.week;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import shelfful.ui.look.FileEnding;
import shelfful.ui.look.ReplaceQuestion;
import shelfful.ui.words.Words;

/**
 * Asks by the system's own windows.
 *
 * @param doors ask the desk what no window of the system can
 */
record AskForWeekFile(Words words, Window window, WeekWindow.Doors doors) implements WeekPlaces {

  @Override
  public boolean mayLeave() {
    return doors.mayLeave().getAsBoolean();
  }

  @Override
  public Optional<Path> toOpen() {
    return ask("week.kindWeek", "*.json", "", chooser -> chooser.showOpenDialog(window));
  }

  @Override
  public Optional<Path> forWeek() {
    return save("week.kindWeek", words.of("week.fileName"), ".week.json");
  }

  @Override
  public Optional<Path> forCalendar() {
    return save("week.kindCalendar", words.of("week.fileName"), ".ics");
  }

  @Override
  public Optional<Path> forSheets(String firingId) {
    return save("saveSheets.kind", words.of("week.fileName") + "-" + firingId, ".pdf");
  }

  @Override
  public Optional<Path> forAllSheets() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(words.of("week.title.folder"));
    return Optional.ofNullable(chooser.showDialog(window)).map(File::toPath);
  }

  @Override
  public void onDesk(OpenedFiring firing) {
    doors.desk().accept(firing);
  }

  private Optional<Path> save(String kind, String name, String ending) {
    return ask(kind, "*" + ending, name + ending, chooser -> chooser.showSaveDialog(window))
        .flatMap(new FileEnding(List.of(ending), new ReplaceQuestion(words, window))::complete);
  }

  private Optional<Path> ask(
      String kind, String pattern, String name, Function<FileChooser, File> question) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(words.of("week.window"));
    chooser.setInitialFileName(name);
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words.of(kind), pattern));
    return Optional.ofNullable(question.apply(chooser)).map(File::toPath);
  }
}
