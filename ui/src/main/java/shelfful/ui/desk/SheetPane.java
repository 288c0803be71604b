package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.drawing.PlanView;
import shelfful.edit.Tentative;
import shelfful.inspect.PlaceFigure;
import shelfful.ui.hand.Held;
import shelfful.ui.look.Em;
import shelfful.ui.shelfview.Overlay;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.shelfview.ShelfViewport;
import shelfful.ui.words.Words;

/** The middle of the desk: the chosen layer's name, its picture, and the work by hand on it. */
final class SheetPane extends VBox {
  private static final double LEAST_TITLES = 190;

  private final Words words;
  private final DeskViewModel model;
  private final ShelfView sheets;
  private final Label heading = new Label();
  private final Label under = new Label();
  private final HandBar hand;

  SheetPane(Words words, DeskViewModel model, ShelfView sheets, DeskCommands commands) {
    this.words = words;
    this.model = model;
    this.sheets = sheets;
    getStyleClass().add("sheet-pane");
    heading.getStyleClass().add("heading");
    under.getStyleClass().add("quiet");
    for (Label label : List.of(heading, under)) {
      label.setWrapText(true);
      label.setMinHeight(USE_PREF_SIZE);
    }
    sheets.lettersProperty().bind(Em.of(under, ShelfView.LETTERS));
    setVgrow(sheets, Priority.ALWAYS);
    hand = new HandBar(words, model, commands);
    getChildren().addAll(bar(), sheets, hand);
    sheets.onPointer(
        new HandPointer(model, () -> sheets.viewport().map(ShelfViewport::scale).orElse(1.0)));
    sheets.setOnKeyPressed(new HandKeys(commands)::pressed);
    model.hand().held().addListener((property, was, is) -> held(was, is));
  }

  /** Leaves more room to the picture where there is little. */
  void keepSmall(boolean small) {
    hand.keepSmall(small);
  }

  private FlowPane bar() {
    VBox titles = new VBox(heading, under);
    HBox buttons =
        new HBox(
            button("sheet.before", () -> model.chooseLayerAfter(-1)),
            button("sheet.after", () -> model.chooseLayerAfter(1)),
            space(),
            button("sheet.smaller", sheets::zoomOut),
            button("sheet.fit", sheets::fit),
            button("sheet.larger", sheets::zoomIn));
    buttons.getStyleClass().add("sheet-buttons");
    FlowPane bar = new FlowPane(titles, buttons);
    bar.getStyleClass().add("bar");
    bar.setRowValignment(VPos.CENTER);
    titles.prefWidthProperty().bind(widthOf(bar, buttons));
    return bar;
  }

  /** The titles push the buttons to the right, or to a line of their own where there is no room. */
  private DoubleBinding widthOf(FlowPane bar, HBox buttons) {
    DoubleBinding least = Em.of(under, LEAST_TITLES);
    return Bindings.createDoubleBinding(
        () -> {
          double sides = bar.snappedLeftInset() + bar.snappedRightInset() + 2;
          double beside = bar.getWidth() - sides - buttons.getWidth();
          return beside >= least.get() ? beside : Math.max(0, bar.getWidth() - sides);
        },
        bar.widthProperty(),
        bar.insetsProperty(),
        buttons.widthProperty(),
        least);
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(words.of(key));
    button.setAccessibleText(words.of(key + "Text"));
    button.setTooltip(new Tooltip(words.of(key + "Text")));
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  private static Region space() {
    Region space = new Region();
    space.setMinWidth(10);
    return space;
  }

  /** Shows the chosen layer as it now is. */
  void refresh() {
    model
        .shown()
        .get()
        .ifPresent(load -> load.layer(model.layerId().get()).ifPresent(one -> show(load, one)));
  }

  private void show(ShownLoad load, LayerList layer) {
    int count = load.lists().layers().size();
    heading.setText(words.of("sheet.heading", layer.layerId(), layer.shelf()));
    String held = load.plan().isLocked(layer.layerId()) ? words.of("sheet.locked") : "";
    under.setText(words.of("sheet.under", layer.clearHeight(), layer.order(), count) + held);
    paper(load, model.hand().held().get());
    pointOut();
    model.hand().held().get().ifPresentOrElse(this::over, () -> sheets.layOver(Overlay.NONE));
  }

  /** The layer's picture, without a piece of it that is in the hand. */
  private void paper(ShownLoad load, Optional<Held> held) {
    String id = model.layerId().get();
    int rows = load.layer(id).map(layer -> layer.rows().size()).orElse(0);
    String told = words.of("sheet.text", id, rows);
    if (held.isPresent()) {
      sheets.show(load.without(id, held.get().pieceId()), told);
    } else if (model.planning().get()) {
      sheets.showSoon(load.sheets(id), told);
    } else {
      sheets.show(load.sheets(id), told);
    }
  }

  /** A piece that was set down stays painted until the plan with it is drawn. */
  private void held(Optional<Held> was, Optional<Held> is) {
    Optional<ShownLoad> load = model.shown().get();
    if (load.isEmpty()) {
      return;
    }
    if (is.isPresent()) {
      over(is.get());
      if (!was.map(Held::pieceId).equals(is.map(Held::pieceId))) {
        // The piece may be seen at both places for a frame; the hand does not wait for the paper.
        model.later(this::lift);
      }
    } else if (isDrawn(load.get())) {
      refresh();
    }
  }

  private void lift() {
    Optional<Held> held = model.hand().held().get();
    if (held.isPresent()) {
      model.shown().get().ifPresent(load -> paper(load, held));
      pointOut();
    }
  }

  private boolean isDrawn(ShownLoad load) {
    return model.work().plan().get().filter(load.plan()::equals).isPresent();
  }

  private void over(Held held) {
    Tentative at = held.tentative();
    ShownLoad load = model.shown().get().orElseThrow();
    Optional<PlanView> view = load.view(at.layerId());
    if (view.isEmpty() || !at.layerId().equals(model.layerId().get())) {
      sheets.layOver(Overlay.NONE);
      return;
    }
    int number = load.picture().numberOf(at.layerId(), held.pieceId());
    int shown = number == 0 ? load.layer(at.layerId()).orElseThrow().rows().size() + 1 : number;
    sheets.layOver(
        new Overlay(
            load.picture().held(at.layerId(), at.place(), shown, held.isForbidden()),
            at.tightest().map(figure -> measure(view.get(), figure, held))));
  }

  private static Overlay.Measure measure(PlanView view, PlaceFigure figure, Held held) {
    return new Overlay.Measure(
        view.at(figure.line().from()),
        view.at(figure.line().to()),
        held.figure(),
        held.isForbidden());
  }

  /** Brings the chosen piece to the middle where the picture is larger than its window. */
  void centre() {
    model
        .shown()
        .get()
        .flatMap(load -> load.ring(model.layerId().get(), model.pieceId().get()))
        .ifPresent(ring -> sheets.centreOn(ring.at()));
  }

  /** Points out the chosen piece. */
  void pointOut() {
    boolean inHand =
        model
            .hand()
            .held()
            .get()
            .filter(h -> h.pieceId().equals(model.pieceId().get()))
            .isPresent();
    Optional<ShownLoad> load = model.shown().get().filter(one -> !inHand);
    sheets.pointOut(load.flatMap(one -> one.ring(model.layerId().get(), model.pieceId().get())));
  }
}
