package shelfful.ui.week;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import shelfful.app.KeepAWeek;
import shelfful.app.Opened;
import shelfful.app.SaveALoad;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.Printing;
import shelfful.inspect.InspectedLoad;
import shelfful.review.InspectedWeek;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/** The files of a week: opened, saved, and handed out as calendar and sheets. */
public final class WeekFileViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final WeekViewModel model;
  private final Supplier<Printing> printing;
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
  private Optional<InspectedWeek> saved = Optional.empty();
  private Optional<Path> file = Optional.empty();

  /**
   * Nothing is open yet.
   *
   * @param printing how sheets are printed
   */
  public WeekFileViewModel(
      Words words, TaskRunner tasks, WeekViewModel model, Supplier<Printing> printing) {
    this.words = words;
    this.tasks = tasks;
    this.model = model;
    this.printing = printing;
    model.steps().now().addListener((property, was, is) -> unsaved.set(!is.equals(saved)));
  }

  /** Whether there is a week that no file holds. */
  public ReadOnlyBooleanProperty unsaved() {
    return unsaved.getReadOnlyProperty();
  }

  /** The file it was saved in last, if any. */
  public Optional<Path> file() {
    return file;
  }

  /** Opens a week, which is planned then, or a week plan; what is refused changes nothing. */
  public void open(Path path) {
    tasks.start(
        () -> KeepAWeek.open(path), opened -> take(opened, Optional.of(path)), model::failed);
  }

  /** Plans the month that comes with the program. */
  public void planDemo() {
    tasks.start(DemoMonth::open, opened -> take(opened, Optional.empty()), model::failed);
  }

  private void take(Opened<KeepAWeek.Week> opened, Optional<Path> from) {
    if (opened instanceof Opened.Refused<KeepAWeek.Week> refused) {
      String key = refused.breaksRules() ? "week.breaks" : "week.unreadable";
      model.tell(words.of(key, String.join(" ", refused.sentences())));
      return;
    }
    Opened.Ready<KeepAWeek.Week> ready = (Opened.Ready<KeepAWeek.Week>) opened;
    Optional<InspectedWeek> plan = ready.value().plan();
    saved = plan;
    file = plan.isPresent() ? from : Optional.empty();
    plan.ifPresentOrElse(model::begin, () -> model.plan(ready.value().request()));
    if (!ready.notes().isEmpty()) {
      model.tell(String.join(" ", ready.notes()));
    }
  }

  /** Shows a week that no file holds, as it was left behind. */
  void recover(InspectedWeek week) {
    saved = Optional.empty();
    file = Optional.empty();
    model.begin(week);
  }

  /** Saves the week as a plan that this becomes the file of. */
  public void save(Path path) {
    model
        .week()
        .ifPresent(
            week -> write(path, () -> KeepAWeek.save(week, path), () -> isSaved(week, path)));
  }

  /**
   * Saves the week before it is left behind, and returns only then; what goes wrong is told.
   *
   * @return whether a file holds the week as it is now
   */
  public boolean saveNow(Path path) {
    model
        .week()
        .ifPresent(
            week ->
                KeepAWeek.save(week, path).ifPresentOrElse(model::tell, () -> isSaved(week, path)));
    return !unsaved.get();
  }

  private void isSaved(InspectedWeek week, Path path) {
    saved = Optional.of(week);
    file = Optional.of(path);
    unsaved.set(!model.week().equals(saved));
  }

  /** Hands the week out as iCalendar. */
  public void saveCalendar(Path path) {
    model.week().ifPresent(week -> write(path, () -> KeepAWeek.calendar(week, path), () -> {}));
  }

  /** Hands the sheets of the chosen firing out as PDF. */
  public void saveSheets(Path path) {
    Printing how = printing.get();
    String firing = model.chosen().get();
    model
        .week()
        .ifPresent(
            week ->
                week.load(firing)
                    .ifPresentOrElse(
                        load -> write(path, () -> sheets(load, how, path), () -> {}),
                        () -> model.tell(words.of("week.nothingToPrint", firing))));
  }

  private static Optional<String> sheets(InspectedLoad load, Printing how, Path path) {
    return SaveALoad.sheets(LoadDrawing.of(load, how), path);
  }

  /** Hands the sheets of every firing out as PDF, each named after its firing. */
  public void saveAllSheets(Path folder) {
    Printing how = printing.get();
    String name = words.of("week.fileName");
    model
        .week()
        .ifPresent(
            week -> write(folder, () -> KeepAWeek.sheets(week, how, folder, name), () -> {}));
  }

  private void write(Path into, Supplier<Optional<String>> saving, Runnable done) {
    tasks.start(
        saving,
        trouble ->
            trouble.ifPresentOrElse(
                model::tell,
                () -> {
                  done.run();
                  model.tell(words.of("week.saved", into));
                }),
        model::failed);
  }
}
