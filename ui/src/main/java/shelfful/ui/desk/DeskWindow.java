package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.ui.kilnview.KilnView;
import shelfful.ui.lists.PieceTable;
import shelfful.ui.lists.WaitingList;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.shelfview.CanvasSurface;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The whole window: kiln, sheet and lists side by side, kept in step with the view model. */
public final class DeskWindow extends BorderPane {
  private final DeskViewModel model;
  private final ShelfView sheets = new ShelfView();
  private final KilnView kiln;
  private final Label seen = new Label();
  private final SheetPane middle;
  private final PieceTable in;
  private final WaitingList waits;
  private final SplitPane desk;
  private final DeskMenu menu;
  private final StartPane start;

  /**
   * Wires a window to a view model.
   *
   * @param askForPlan asks the user for a file; empty when there is none to open
   */
  public DeskWindow(Words words, DeskViewModel model, Supplier<Optional<Path>> askForPlan) {
    CanvasSurface.loadTypeface();
    this.model = model;
    menu = new DeskMenu(words, model, sheets, askForPlan);
    kiln = new KilnView(words, model::chooseLayer);
    middle = new SheetPane(words, model, sheets);
    in =
        new PieceTable(words, row -> model.choosePiece(row.map(LayerList.Row::pieceId).orElse("")));
    waits = new WaitingList(words);
    desk = new SplitPane(left(words), middle, right());
    desk.setDividerPositions(0.25, 0.69);
    SplitPane.setResizableWithParent(desk.getItems().get(0), false);
    SplitPane.setResizableWithParent(desk.getItems().get(2), false);
    getStylesheets().add(DeskWindow.class.getResource("desk.css").toExternalForm());
    getStyleClass().add("desk");
    Look.dress(this, Settings.usual(Locale.ROOT));
    setTop(new VBox(menu, new HeaderPane(words, model)));
    start = new StartPane(words, () -> askForPlan.get().ifPresent(model::open), model::tryTheDemo);
    setCenter(start);
    sheets.onPick(model::choosePieceAt);
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    listen();
  }

  /** Adds a menu behind the others. */
  void add(Menu more) {
    menu.getMenus().add(more);
  }

  /** Offers one more way to begin while nothing is shown. */
  void offer(String what, Runnable action) {
    start.offer(what, action);
  }

  private VBox left(Words words) {
    Label heading = new Label(words.of("kiln.heading"));
    heading.getStyleClass().add("heading");
    seen.getStyleClass().add("quiet");
    seen.setWrapText(true);
    seen.setMinHeight(USE_PREF_SIZE);
    kiln.setAccessibleText(words.of("kiln.text"));
    VBox.setVgrow(kiln, Priority.ALWAYS);
    VBox left = new VBox(heading, seen, kiln);
    left.getStyleClass().add("side");
    left.setMinWidth(200);
    return left;
  }

  private VBox right() {
    VBox.setVgrow(in, Priority.ALWAYS);
    waits.setMinHeight(150);
    waits.setPrefHeight(230);
    VBox right = new VBox(in, waits);
    right.getStyleClass().add("side");
    right.setMinWidth(260);
    return right;
  }

  private void listen() {
    model.shown().addListener((property, was, is) -> is.ifPresent(this::show));
    model.layerId().addListener((property, was, is) -> model.shown().get().ifPresent(this::layer));
    model
        .pieceId()
        .addListener(
            (property, was, is) -> {
              middle.pointOut();
              in.mark(is);
            });
  }

  private void show(ShownLoad load) {
    setCenter(desk);
    String side = load.side().seen();
    seen.setText(side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1));
    kiln.show(load.side(), load.lists().layers());
    waits.show(load.lists().waiting());
    layer(load);
  }

  private void layer(ShownLoad load) {
    String id = model.layerId().get();
    load.layer(id).ifPresent(in::show);
    kiln.mark(id);
    in.mark(model.pieceId().get());
    middle.refresh();
  }

  /** Plain + and − zoom and 0 fits, wherever nobody else wants them. */
  private void pressed(KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    switch (event.getCode()) {
      case PLUS, ADD, EQUALS -> sheets.zoomIn();
      case MINUS, SUBTRACT -> sheets.zoomOut();
      case DIGIT0, NUMPAD0 -> sheets.fit();
      default -> {
        return;
      }
    }
    event.consume();
  }
}
