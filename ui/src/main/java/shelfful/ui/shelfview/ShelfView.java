package shelfful.ui.shelfview;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import shelfful.drawing.Box;
import shelfful.drawing.Sheet;
import shelfful.drawing.Spot;

/**
 * The sheets of one layer, to look at closely: the wheel moves the paper, with Ctrl it zooms at the
 * pointer; dragging moves the paper unless somebody takes the drag; what lies over the paper is
 * painted by itself.
 */
public final class ShelfView extends Region {
  /** The size of the letters of figures over the paper, in pixels at 100 %. */
  public static final double LETTERS = 14;

  private static final double STEP = 1.25;

  /** Larger pictures are beyond some graphics cards; in pixels. */
  private static final double LARGEST = 4096;

  private static final double CLICK = 4;

  private final PaperCanvas canvas = new PaperCanvas();
  private final Canvas over = new Canvas();
  private List<Sheet> sheets = List.of();
  private Optional<Ring> ring = Optional.empty();
  private Optional<ShelfViewport> viewport = Optional.empty();
  private Overlay overlay = Overlay.NONE;
  private Pointer pointer = Pointer.none();
  private final DoubleProperty letters = new SimpleDoubleProperty(LETTERS);
  private boolean taken;
  private boolean isClear = true;
  private MouseEvent lastDrag;
  private double dragged;

  /** Shows nothing yet. */
  public ShelfView() {
    getStyleClass().add("shelf-view");
    over.setMouseTransparent(true);
    over.setViewOrder(-1);
    getChildren().addAll(canvas.nodes());
    getChildren().add(over);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(120, 120);
    setOnScroll(this::scrolled);
    setOnMousePressed(this::pressed);
    setOnMouseDragged(this::dragged);
    setOnMouseReleased(this::released);
    letters.addListener(changed -> paintOver());
    setOnMouseMoved(event -> paper(event).ifPresent(at -> pointer.move(at, event.isShiftDown())));
  }

  /**
   * A piece to point out.
   *
   * @param at on the first sheet
   * @param radius in millimetres of paper
   */
  public record Ring(Spot at, double radius) {}

  /** Shows other sheets at once; the zoom stays where their size is the same. */
  public void show(List<Sheet> others, String told) {
    show(others, told, false);
  }

  /** Shows other sheets when they are painted, which takes some frames and holds up none. */
  public void showSoon(List<Sheet> others, String told) {
    show(others, told, true);
  }

  private void show(List<Sheet> others, String told, boolean soon) {
    List<Sheet> before = sheets;
    sheets = List.copyOf(others);
    setAccessibleText(told);
    Optional<ShelfViewport> same =
        viewport.filter(one -> paper().filter(one.paper()::equals).isPresent());
    if (same.isPresent() && before.equals(sheets)) {
      return;
    }
    Optional<Box> changed =
        same.filter(one -> before.size() == 1 && sheets.size() == 1)
            .flatMap(one -> Covered.byDifference(before.get(0).marks(), sheets.get(0).marks()))
            .filter(this::isSmall);
    if (changed.isPresent() && canvas.patch(sheets.get(0), same.get(), changed.get())) {
      paintOver();
    } else if (soon && same.isPresent() && sheets.size() == 1) {
      canvas.paintSoon(sheets.get(0), same.get());
    } else {
      viewport = same;
      requestLayout();
      paint();
    }
  }

  /** Whether painting a part alone is worth its while, as when one piece moved. */
  private boolean isSmall(Box part) {
    Sheet sheet = sheets.get(0);
    return 2 * part.width() * part.height() < sheet.width() * sheet.height();
  }

  /** Points a piece out, or none. */
  public void pointOut(Optional<Ring> other) {
    ring = other;
    paintOver();
  }

  /** Lays something over the paper; what is under it is not painted again. */
  public void layOver(Overlay other) {
    overlay = other;
    paintOver();
  }

  /** The size of the letters of figures over the paper, in pixels. */
  public DoubleProperty lettersProperty() {
    return letters;
  }

  /** Who is told what the mouse does on the first sheet. */
  public void onPointer(Pointer other) {
    pointer = other;
  }

  private Optional<Spot> paper(MouseEvent event) {
    return viewport.map(one -> one.toPaper(event.getX(), event.getY()));
  }

  /** A step larger about the middle. */
  public void zoomIn() {
    zoom(STEP, getWidth() / 2, getHeight() / 2);
  }

  /** A step smaller about the middle. */
  public void zoomOut() {
    zoom(1 / STEP, getWidth() / 2, getHeight() / 2);
  }

  /** The whole first sheet. */
  public void fit() {
    viewport = paper().map(paper -> ShelfViewport.fitted(paper, screen()));
    paint();
  }

  /** What is seen, or empty without a sheet. */
  public Optional<ShelfViewport> viewport() {
    return viewport;
  }

  private Optional<ShelfViewport.Paper> paper() {
    return sheets.stream()
        .findFirst()
        .map(first -> new ShelfViewport.Size(first.width(), first.height()))
        .map(size -> new ShelfViewport.Paper(size, sheets.size()));
  }

  /** Brings a place of the first sheet as near the middle as the paper's edges allow. */
  public void centreOn(Spot at) {
    viewport = viewport.map(one -> one.centredOn(at));
    paint();
  }

  private ShelfViewport.Size screen() {
    return new ShelfViewport.Size(canvas.width(), canvas.height());
  }

  private void zoom(double factor, double x, double y) {
    viewport = viewport.map(one -> one.zoomed(factor, x, y));
    paint();
  }

  private void push(double right, double down) {
    viewport = viewport.map(one -> one.pushed(right, down));
    paint();
  }

  private void scrolled(ScrollEvent event) {
    if (event.isShortcutDown() || event.isControlDown()) {
      if (event.getDeltaY() != 0) {
        zoom(event.getDeltaY() > 0 ? STEP : 1 / STEP, event.getX(), event.getY());
      }
    } else {
      push(event.getDeltaX(), event.getDeltaY());
    }
    event.consume();
  }

  private void pressed(MouseEvent event) {
    requestFocus();
    lastDrag = event;
    dragged = 0;
    taken =
        event.getButton() == MouseButton.PRIMARY && paper(event).filter(pointer::press).isPresent();
  }

  private void dragged(MouseEvent event) {
    double right = event.getX() - lastDrag.getX();
    double down = event.getY() - lastDrag.getY();
    dragged += Math.hypot(right, down);
    lastDrag = event;
    if (!taken) {
      push(right, down);
    } else if (dragged >= CLICK) {
      paper(event).ifPresent(at -> pointer.drag(at, event.isShiftDown()));
    }
  }

  private void released(MouseEvent event) {
    if (dragged < CLICK && event.getButton() == MouseButton.PRIMARY) {
      paper(event).ifPresent(at -> pointer.click(at, event.getClickCount()));
    } else if (taken) {
      pointer.drop();
    }
    taken = false;
  }

  @Override
  protected void layoutChildren() {
    canvas.resize(
        Math.min(LARGEST, Math.floor(getWidth())), Math.min(LARGEST, Math.floor(getHeight())));
    over.setWidth(canvas.width());
    over.setHeight(canvas.height());
    viewport =
        viewport
            .map(one -> one.through(screen()))
            .or(() -> paper().map(paper -> ShelfViewport.fitted(paper, screen())));
    paint();
  }

  private void paint() {
    canvas.paint(sheets, viewport);
    paintOver();
  }

  private void paintOver() {
    if (isClear && ring.isEmpty() && overlay == Overlay.NONE) {
      return;
    }
    over.getGraphicsContext2D().clearRect(0, 0, over.getWidth(), over.getHeight());
    isClear = ring.isEmpty() && overlay == Overlay.NONE;
    viewport
        .map(seen -> new OverlayPainter(over, seen, letters.get()))
        .ifPresent(
            painter -> {
              ring.ifPresent(painter::ring);
              painter.marks(overlay);
            });
  }
}
