package shelfful.ui.batches;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.app.BatchLines;
import shelfful.app.KeepAFile;
import shelfful.ui.look.Em;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The batch list: the table, what can be done with it, and everything wrong with it. */
public final class BatchPane extends BorderPane {
  private static final int MOST_FAULTS = 100;
  private static final double FAULTS = 110;
  private static final KeyCombination PASTE = shortcut(KeyCode.V);
  private static final KeyCombination UNDO = shortcut(KeyCode.Z);
  private static final KeyCombination REDO = shortcut(KeyCode.Y);

  private final Words words;
  private final BatchListViewModel model;
  private final Surroundings around;
  private final BatchTable table;
  private final VBox work;
  private final ListView<String> faults = new ListView<>();

  /**
   * What the pane asks of its window.
   *
   * @param toOpen the list to open; empty when there is none after all
   * @param toSave where to save; empty when not after all
   * @param clipboard the text on the clipboard; empty when there is none
   * @param memory of what columns were taken for
   * @param plan plans the batches of the list
   */
  public record Surroundings(
      Supplier<Optional<Path>> toOpen,
      Supplier<Optional<Path>> toSave,
      Supplier<Optional<String>> clipboard,
      ColumnMemory memory,
      Runnable plan) {}

  /** Shows what the view model holds. */
  public BatchPane(Words words, BatchListViewModel model, Surroundings around) {
    this.words = words;
    this.model = model;
    this.around = around;
    getStyleClass().add("batch-pane");
    Label counts = Lines.of("");
    counts.textProperty().bind(model.counts());
    table = new BatchTable(model, counts);
    faults.setAccessibleText(words.of("batches.faults"));
    faults.setCellFactory(view -> new SentenceCell());
    faults.prefHeightProperty().bind(Em.of(counts, FAULTS));
    faults.minHeightProperty().bind(Em.of(counts, FAULTS / 2));
    faults.managedProperty().bind(faults.visibleProperty());
    VBox.setVgrow(table, Priority.ALWAYS);
    work = new VBox(counts, table, faults);
    work.getStyleClass().add("list-side");
    setTop(new VBox(bar(), message()));
    setCenter(work);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    model.lines().addListener((ListChangeListener<BatchLines.Line>) change -> tellFaults());
    tellFaults();
  }

  /** The text on the system's clipboard. */
  public static Optional<String> systemClipboard() {
    return Optional.ofNullable(Clipboard.getSystemClipboard().getString());
  }

  private static KeyCombination shortcut(KeyCode code) {
    return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
  }

  private FileBar bar() {
    Button plan = FileBar.button(words, "batches.plan", around.plan());
    plan.getStyleClass().add("main-button");
    return new FileBar(words)
        .with(
            "batches.open",
            () -> around.toOpen().get().flatMap(model::open).ifPresent(this::preview))
        .with("batches.save", this::save)
        .with("batches.saveAs", () -> around.toSave().get().ifPresent(model::save))
        .with("batches.add", () -> table.begin(model.add()))
        .with("batches.duplicate", () -> model.duplicate(table.chosenRows()))
        .with("batches.delete", () -> model.delete(table.chosenRows()))
        .with("batches.paste", this::paste)
        .with("batches.undo", model::undo, model.steps().nameOfLast())
        .with("batches.redo", model::redo, model.steps().nameOfNext())
        .with(plan)
        .ending("batches.unsaved", model.unsaved());
  }

  private Label message() {
    return Lines.following(model.message(), "told");
  }

  private void save() {
    model.file().or(() -> around.toSave().get()).ifPresent(model::save);
  }

  private void pressed(KeyEvent event) {
    if (table.getEditingCell() != null || getCenter() != work) {
      return;
    }
    if (PASTE.match(event)) {
      paste();
    } else if (UNDO.match(event)) {
      model.undo();
    } else if (REDO.match(event)) {
      model.redo();
    } else if (BatchTable.isDelete(event)) {
      model.delete(table.chosenRows());
    } else {
      return;
    }
    event.consume();
  }

  /** Shows what is on the clipboard before any of it is taken. */
  public void paste() {
    around.clipboard().get().filter(text -> !text.isBlank()).ifPresent(this::preview);
  }

  private void preview(String text) {
    PasteViewModel paste = new PasteViewModel(model, around.memory(), text);
    PastePane.Wishes wishes =
        new PastePane.Wishes(
            () -> setCenter(work),
            bytes -> around.toSave().get().ifPresent(file -> KeepAFile.save(file, bytes)));
    ScrollPane all = new ScrollPane(new PastePane(paste, wishes));
    all.setFitToWidth(true);
    all.setFitToHeight(true);
    all.setFocusTraversable(false);
    setCenter(all);
  }

  private void tellFaults() {
    List<String> told = model.faults(MOST_FAULTS);
    faults.getItems().setAll(told);
    faults.setVisible(!told.isEmpty());
  }
}
