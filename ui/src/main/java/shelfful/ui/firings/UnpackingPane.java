package shelfful.ui.firings;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.Spot;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.look.PlainTable;
import shelfful.ui.look.Scrolled;
import shelfful.ui.shelfview.Overlay;
import shelfful.ui.shelfview.PiecesOnSheet;
import shelfful.ui.shelfview.Pointer;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/**
 * Unpacking: the layer's drawing and its list side by side; a click or a key marks the chosen
 * piece.
 */
final class UnpackingPane extends BorderPane {
  private final Words words;
  private final UnpackingViewModel model;
  private final GradeKeys keys;
  private final GradeButtons buttons;
  private final ShelfView sheet = new ShelfView();
  private final Label noDrawing;
  private final ComboBox<String> layers = new ComboBox<>();
  private final PlainTable<UnpackedRow> table;
  private boolean following;

  UnpackingPane(Words words, UnpackingViewModel model) {
    this.words = words;
    this.model = model;
    this.keys = new GradeKeys(words);
    this.buttons = new GradeButtons(words, model);
    this.noDrawing = Lines.of(words.of("unpack.noDrawing"), "quiet");
    table =
        new PlainTable<UnpackedRow>(words.of("unpack.list"), words.of("unpack.empty"))
            .column(words.of("in.number"), row -> Integer.toString(row.number()))
            .column(words.of("unpack.mark"), this::mark)
            .column(words.of("in.piece"), UnpackedRow::what)
            .column(words.of("unpack.cause"), UnpackingPane::cause);
    sheet.setAccessibleText(words.of("unpack.drawing"));
    sheet.onPointer(new Choosing());
    table
        .table()
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((property, was, is) -> chosen(is));
    VBox.setVgrow(sheet, Priority.ALWAYS);
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox right = new VBox(table, buttons);
    right.getStyleClass().add("list-side");
    SplitPane split = new SplitPane(new VBox(noDrawing, sheet), Scrolled.of(right));
    split.setDividerPositions(0.5);
    setTop(bar());
    setCenter(split);
    addEventHandler(KeyEvent.KEY_TYPED, this::typed);
    model.turn().addListener((property, was, is) -> follow());
    model.pieceId().addListener((property, was, is) -> point());
    follow();
  }

  private FlowPane bar() {
    layers.setConverter(new ByWords<>(model::told));
    layers
        .valueProperty()
        .addListener(
            (property, was, is) -> {
              if (!following && is != null) {
                model.chooseLayer(is);
              }
            });
    FlowPane bar = new FlowPane(new Labelled(words.of("unpack.layers"), layers));
    bar.getStyleClass().addAll("tool-bar-row");
    return bar;
  }

  private String mark(UnpackedRow row) {
    Optional<Grade> grade = row.result().map(PieceResult::grade);
    return grade
        .map(one -> words.of("unpack.graded", keys.letter(one), words.of("grade", one)))
        .orElse("–");
  }

  private static String cause(UnpackedRow row) {
    return row.result().flatMap(PieceResult::cause).orElse("");
  }

  private void chosen(UnpackedRow row) {
    if (!following && row != null) {
      model.choose(row.pieceId());
    }
  }

  /** Keys of letters mark; they do nothing while a cause is being typed. */
  private void typed(KeyEvent event) {
    if (!buttons.isTyping()) {
      keys.of(event.getCharacter())
          .ifPresent(
              grade -> {
                buttons.mark(grade);
                event.consume();
              });
    }
  }

  private void follow() {
    following = true;
    List<String> all = model.layers();
    layers.getItems().setAll(all);
    layers.setValue(all.isEmpty() ? null : model.layerId().get());
    table.show(model.rows().get());
    following = false;
    String layer = model.layerId().get();
    Optional<FiringPicture> picture = model.picture().filter(one -> one.layer(layer).isPresent());
    noDrawing.setVisible(picture.isEmpty() && !all.isEmpty());
    noDrawing.setManaged(noDrawing.isVisible());
    sheet.show(picture.map(one -> one.sheet(layer)).stream().toList(), words.of("unpack.drawing"));
    sheet.layOver(
        picture
            .map(one -> one.graded(layer, model.grades(), keys.letters()))
            .map(marks -> new Overlay(marks, Optional.empty()))
            .orElse(Overlay.NONE));
    point();
  }

  private Optional<PiecesOnSheet> pieces() {
    return model.picture().flatMap(one -> one.pieces(model.layerId().get()));
  }

  private void point() {
    String piece = model.pieceId().get();
    sheet.pointOut(pieces().flatMap(one -> one.ring(piece)));
    following = true;
    table.table().getItems().stream()
        .filter(row -> row.pieceId().equals(piece))
        .findFirst()
        .ifPresentOrElse(
            row -> {
              table.table().getSelectionModel().select(row);
              table.table().scrollTo(row);
            },
            () -> table.table().getSelectionModel().clearSelection());
    following = false;
  }

  /** A click chooses a piece. */
  private final class Choosing implements Pointer {
    @Override
    public boolean press(Spot at) {
      return false;
    }

    @Override
    public void drag(Spot at, boolean free) {}

    @Override
    public void drop() {}

    @Override
    public void click(Spot at, int times) {
      String piece = pieces().flatMap(one -> one.at(at)).orElse("");
      model.choose(piece);
    }

    @Override
    public void move(Spot at, boolean free) {}
  }
}
