package shelfful.ui.firings;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.app.FiringFolder;
import shelfful.app.KeepAFile;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.UnpackedFiring;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The firings at the left; at the right how the chosen one went and how its ware came out. */
public final class FiringsPane extends BorderPane {
  private static final double SIDES = 34;

  private final Words words;
  private final FiringBook book;
  private final Doors doors;
  private final ListView<UnpackedFiring> list = new ListView<>();
  private boolean following;

  /**
   * What the pane asks of the program.
   *
   * @param record begins the record of the plan on the desk
   * @param folder asks for another folder of firings; empty when not after all
   * @param note asks for a note that a phone saved; empty when not after all
   * @param clipboard the text on it
   */
  public record Doors(
      Runnable record,
      Supplier<Optional<Path>> folder,
      Supplier<Optional<Path>> note,
      Supplier<Optional<String>> clipboard) {}

  /** Shows the firings of a book. */
  public FiringsPane(Words words, FiringBook book, UnpackingViewModel unpacking, Doors doors) {
    this.words = words;
    this.book = book;
    this.doors = doors;
    getStyleClass().add("firings-pane");
    setTop(new VBox(bar(), banner(), Lines.following(book.told(), "told")));
    Tab unpack = tab("firings.unpacking", new UnpackingPane(words, unpacking));
    Tab course = tab("firings.course", new CoursePane(words, book));
    TabPane tabs = new TabPane(unpack, course);
    tabs.setAccessibleText(words.of("firings.tabs"));
    SplitPane split = new SplitPane(side(), tabs);
    split.setDividerPositions(0.24);
    SplitPane.setResizableWithParent(split.getItems().get(0), false);
    setCenter(split);
    book.firings().addListener((property, was, is) -> follow());
    book.chosen().addListener((property, was, is) -> follow());
    follow();
  }

  private Tab tab(String key, Node content) {
    Tab tab = new Tab(words.of(key), content);
    tab.setClosable(false);
    return tab;
  }

  private FileBar bar() {
    return new FileBar(words)
        .with("firings.record", doors.record())
        .with("firings.note", () -> doors.note().get().ifPresent(this::note))
        .with(
            "firings.paste",
            () ->
                doors
                    .clipboard()
                    .get()
                    .ifPresent(
                        text ->
                            book.takeNote(
                                words.of("firings.pasted"), text.getBytes(StandardCharsets.UTF_8))))
        .with("firings.folder", () -> doors.folder().get().ifPresent(this::use));
  }

  private void use(Path folder) {
    book.use(new FiringFolder(folder));
  }

  private void note(Path file) {
    String name = String.valueOf(file.getFileName());
    KeepAFile.read(file)
        .ifPresentOrElse(
            bytes -> book.takeNote(name, bytes), () -> book.tell("book.noteUnreadable", name));
  }

  private Label banner() {
    return Lines.during(book.madeUp(), words.of("book.banner"), "told", "wrong", "strong");
  }

  private VBox side() {
    list.setAccessibleText(words.of("firings.list"));
    list.setPlaceholder(Lines.of(words.of("firings.empty")));
    list.setCellFactory(view -> new Cell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, was, is) -> {
              if (!following && is != null) {
                book.choose(is.record().id());
              }
            });
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox side = new VBox(list);
    side.getStyleClass().add("list-side");
    return side;
  }

  private void follow() {
    following = true;
    if (!list.getItems().equals(book.firings().get())) {
      list.getItems().setAll(book.firings().get());
    }
    book.chosen().get().ifPresent(list.getSelectionModel()::select);
    following = false;
  }

  private final class Cell extends ListCell<UnpackedFiring> {
    private final Label what = Lines.of("", "strong");
    private final Label counts = Lines.of("");
    private final VBox both = new VBox(what, counts);

    Cell() {
      for (Label label : List.of(what, counts)) {
        label.maxWidthProperty().bind(list.widthProperty().subtract(SIDES));
      }
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(UnpackedFiring firing, boolean empty) {
      super.updateItem(firing, empty);
      setGraphic(empty ? null : both);
      if (!empty) {
        FiringRecord record = firing.record();
        what.setText(
            words.of(
                "firings.what",
                record.day().toString(),
                record.firing().cone().number(),
                record.planMark()));
        counts.setText(
            words.of(
                "firings.counts",
                record.pieces().size(),
                firing.results().size(),
                firing.count(Grade.SECOND),
                firing.count(Grade.LOST)));
        setAccessibleText(what.getText() + ", " + counts.getText());
      }
    }
  }
}
