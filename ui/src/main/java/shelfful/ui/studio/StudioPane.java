package shelfful.ui.studio;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Em;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The studio: its things at the left, the chosen one's page at the right with its drawing. */
public final class StudioPane extends BorderPane {
  private static final KeyCombination UNDO =
      new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination REDO =
      new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);

  private static final double SIDE = 210;
  private static final double PICTURE_SHARE = 0.36;

  private final Words words;
  private final StudioViewModel model;
  private final Files files;
  private final ListView<String> things = new ListView<>();
  private final PictureView picture = new PictureView();
  private final ComboBox<Section> sections = new ComboBox<>();
  private final Label message;
  private boolean following;

  /**
   * Asks for files.
   *
   * @param toOpen the studio file to open; empty when there is none after all
   * @param toSave where to save; empty when not after all
   */
  public record Files(Supplier<Optional<Path>> toOpen, Supplier<Optional<Path>> toSave) {}

  /** Shows what the view model holds. */
  public StudioPane(Words words, StudioViewModel model, Files files) {
    this.words = words;
    this.model = model;
    this.files = files;
    getStyleClass().add("studio-pane");
    message = told(model.message());
    setTop(new VBox(bar(), message, told(model.warnings())));
    SplitPane split = new SplitPane(side(), page());
    split.setDividerPositions(0.27);
    SplitPane.setResizableWithParent(split.getItems().get(0), false);
    setCenter(split);
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    model.page().addListener((property, was, is) -> follow());
    model.trial().addListener((property, was, is) -> draw());
    follow();
  }

  private FileBar bar() {
    return new FileBar(words)
        .with("studio.open", () -> files.toOpen().get().ifPresent(model::open))
        .with("studio.save", this::save)
        .with("studio.saveAs", () -> files.toSave().get().ifPresent(model::save))
        .with("studio.undo", model::undo, model.steps().nameOfLast())
        .with("studio.redo", model::redo, model.steps().nameOfNext())
        .ending("studio.unsaved", model.unsaved());
  }

  private void save() {
    model.file().or(() -> files.toSave().get()).ifPresent(model::save);
  }

  private static Label told(ReadOnlyStringProperty what) {
    return Lines.following(what, "told");
  }

  private VBox side() {
    sections.getItems().setAll(Section.values());
    sections.setConverter(new ByWords<>(section -> words.of("section", section)));
    sections.setValue(model.section().get());
    sections.setAccessibleText(words.of("studio.sections"));
    sections.setMaxWidth(Double.MAX_VALUE);
    sections
        .valueProperty()
        .addListener(
            (property, was, is) -> {
              if (!following && is != null) {
                model.choose(is);
              }
            });
    things.setId("studio-things");
    things.setAccessibleText(words.of("studio.things"));
    things
        .getSelectionModel()
        .selectedIndexProperty()
        .addListener(
            (property, was, is) -> {
              if (!following && is.intValue() >= 0) {
                model.choose(is.intValue());
              }
            });
    VBox.setVgrow(things, Priority.ALWAYS);
    FlowPane buttons =
        new FlowPane(
            FileBar.button(words, "studio.add", model::add),
            FileBar.button(words, "studio.duplicate", model::duplicate),
            FileBar.button(words, "studio.delete", model::delete));
    buttons.setHgap(6);
    buttons.setVgap(6);
    model.section().addListener((property, was, is) -> buttons.setDisable(!model.isList()));
    VBox side = new VBox(sections, things, buttons);
    side.getStyleClass().add("list-side");
    side.minWidthProperty().bind(Em.of(message, SIDE));
    return side;
  }

  /** The drawing stays in sight while the fields under it are gone through. */
  private VBox page() {
    ScrollPane fields = new ScrollPane(new PageView(model));
    fields.setFitToWidth(true);
    fields.setFocusTraversable(false);
    VBox.setVgrow(fields, Priority.ALWAYS);
    VBox page = new VBox(picture, fields);
    picture.setMinHeight(USE_PREF_SIZE);
    picture.prefHeightProperty().bind(page.heightProperty().multiply(PICTURE_SHARE));
    return page;
  }

  private void pressed(KeyEvent event) {
    if (UNDO.match(event)) {
      model.undo();
      event.consume();
    } else if (REDO.match(event)) {
      model.redo();
      event.consume();
    }
  }

  private void follow() {
    following = true;
    sections.setValue(model.section().get());
    if (!things.getItems().equals(model.names())) {
      things.getItems().setAll(model.names());
    }
    things.getSelectionModel().select(model.index().get());
    following = false;
    draw();
  }

  private void draw() {
    StudioPictures pictures = new StudioPictures(model.manner().get());
    Section section = model.section().get();
    int index = model.index().get();
    picture.show(pictures.of(model.trial().get(), section, index));
    picture.setAccessibleText(pictures.told(model.trial().get(), section, index));
  }
}
