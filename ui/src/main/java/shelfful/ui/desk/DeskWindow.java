package shelfful.ui.desk;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import shelfful.app.RecoveryFolder;
import shelfful.drawing.LoadDrawing;
import shelfful.inspect.Finding;
import shelfful.ui.kilnview.KilnView;
import shelfful.ui.lists.PieceTable;
import shelfful.ui.lists.ProblemList;
import shelfful.ui.lists.WaitingList;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.shelfview.CanvasSurface;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.words.Words;

/** The whole window: kiln, layer and lists side by side, kept in step with the view model. */
public final class DeskWindow extends BorderPane {
  /** The side of a picture that nobody sees, in pixels. */
  private static final double UNSEEN = 400;

  private final Words words;
  private final DeskViewModel model;
  private final Saving saving;
  private final Leaving leaving;
  private final ShelfView sheets = new ShelfView();
  private final KilnPane kiln;
  private final SheetPane middle;
  private final PieceTable in;
  private final WaitingList waits;
  private final ProblemList problems;
  private final DeskPanes desk;
  private final DeskMenu menu;
  private final StartPane start;
  private final StackPane center = new StackPane();

  /**
   * Wires a window to a view model.
   *
   * @param places asks the user for files
   */
  public DeskWindow(Words words, DeskViewModel model, Places places) {
    CanvasSurface.loadTypeface();
    this.words = words;
    this.model = model;
    saving = new Saving(words, model, places);
    leaving = new Leaving(words, places, saving.document());
    DeskCommands commands = new DeskCommands(words, model);
    kiln = new KilnPane(words, new KilnView(words, model::chooseLayer));
    middle = new SheetPane(words, model, sheets, commands);
    in =
        new PieceTable(
            words, row -> row.map(one -> one.piece().pieceId()).ifPresent(model::choosePiece));
    waits = new WaitingList(words, model::choosePiece, () -> putIn(commands));
    problems = new ProblemList(words, this::point);
    desk =
        new DeskPanes(
            new DeskPanes.Parts(kiln, middle, in, waits, problems), words.of("lists.tabs"));
    getStylesheets().add(DeskWindow.class.getResource("desk.css").toExternalForm());
    getStyleClass().add("desk");
    Look.dress(this, Settings.usual(Locale.ROOT));
    DeskMenu.Doors doors = new DeskMenu.Doors(commands, saving, leaving, sheets, this::showPreview);
    menu = new DeskMenu(words, model, doors);
    setTop(new VBox(menu, new HeaderPane(words, model)));
    // The desk lies under the start from the first moment, so that it is laid out already when the
    // first plan comes.
    desk.rehearse();
    center.getChildren().add(desk);
    start = new StartPane(words, () -> leaving.toOpen().ifPresent(model::open), model::tryTheDemo);
    cover(start);
    setCenter(center);
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    waits.room(Room.of(words, model));
    listen();
  }

  /** Offers to look closer at what waits. */
  void offerWhy(String what, Runnable action) {
    waits.offer(what, action);
  }

  /**
   * Offers what an earlier run of the program left unsaved, if anything.
   *
   * @param then is done when there is nothing more to offer
   */
  public void offer(RecoveryFolder recovery, Runnable then) {
    saving.offer(recovery, then);
  }

  /** Makes ready for the first plan, and paints one where nobody sees it. */
  void rehearse() {
    model.rehearse(
        load -> {
          model.later(
              () ->
                  unseen(
                      new KilnView(words, id -> {}),
                      view -> view.show(load.side(), load.lists().layers())));
          new DeskRehearsal(words, model, load, desk).start();
        });
  }

  private static <R extends Region> void unseen(R view, Consumer<R> shown) {
    view.resize(UNSEEN, UNSEEN);
    shown.accept(view);
    view.layout();
    view.snapshot(null, null);
  }

  /** Asks before unsaved work is left behind. */
  Leaving leaving() {
    return leaving;
  }

  /** Adds a menu behind the others. */
  void add(Menu more) {
    menu.getMenus().add(more);
  }

  /** Offers one more way to begin while nothing is shown. */
  void offer(String what, Runnable action) {
    start.offer(what, action);
  }

  private void listen() {
    model.shown().addListener((property, was, is) -> is.ifPresent(this::show));
    model.layerId().addListener((property, was, is) -> model.shown().get().ifPresent(this::layer));
    model.pieceId().addListener((property, was, is) -> mark(is));
  }

  private void mark(String pieceId) {
    middle.pointOut();
    in.mark(pieceId);
    waits.mark(pieceId);
    problems.mark(pieceId);
  }

  /** The picture gets the focus with the piece, so that the keys carry it at once. */
  private void putIn(DeskCommands commands) {
    commands.putIn();
    sheets.requestFocus();
  }

  private void point(Finding finding) {
    finding.pieceIds().stream()
        .filter(id -> !finding.pieceIds().contains(model.pieceId().get()))
        .findFirst()
        .ifPresent(model::choosePiece);
    if (finding.pieceIds().isEmpty() && !finding.layerId().isEmpty()) {
      model.chooseLayer(finding.layerId());
    }
    middle.centre();
  }

  private void show(ShownLoad load) {
    if (!isPreviewed()) {
      uncover();
    }
    kiln.show(load);
    layer(load);
    // A step of its own, so that the first plan does not hold up the screen.
    model.later(
        () -> {
          waits.show(load.lists().waiting());
          problems.show(load.judged().findings());
          mark(model.pieceId().get());
        });
  }

  private void layer(ShownLoad load) {
    String id = model.layerId().get();
    kiln.mark(id);
    middle.refresh();
    model.later(
        () -> {
          load.layer(id).ifPresent(layer -> in.show(layer, new PieceRows(words, load).of(layer)));
          mark(model.pieceId().get());
        });
  }

  /** Shows the sheets as they are printed, over the desk; called again, the desk comes back. */
  void showPreview() {
    saving.preview().ifPresent(this::preview);
  }

  private void preview(LoadDrawing drawing) {
    if (isPreviewed()) {
      uncover();
      return;
    }
    PreviewPane pane = new PreviewPane(words, drawing, saving::print, this::uncover);
    cover(pane);
    pane.takeFocus();
  }

  private boolean isPreviewed() {
    return center.getChildren().stream().anyMatch(PreviewPane.class::isInstance);
  }

  /** Lays something over the desk, which rests meanwhile. */
  private void cover(Node other) {
    desk.setDisable(true);
    desk.setOpacity(0);
    center.getChildren().setAll(desk, other);
  }

  private void uncover() {
    if (desk.isDisable()) {
      center.getChildren().setAll(desk);
      desk.setDisable(false);
      desk.setOpacity(1);
    }
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
