package shelfful.ui.calendar;

import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import shelfful.ui.calendar.CalendarPicture.Ghost;

/**
 * The calendar on a canvas that is never larger than its window. What it shows also exists as a
 * list beside it, with one choice for both.
 */
public final class CalendarView extends Region {
  private static final double STEP = 1.4;

  private final CalendarWords words;
  private final Canvas canvas = new Canvas();
  private final ScrollBar along = new ScrollBar();
  private final ScrollBar down = new ScrollBar();
  private final Tones tones = new Tones(this::requestLayout);
  private Optional<CalendarPicture> picture = Optional.empty();
  private Optional<TimeWindow> window = Optional.empty();
  private Optional<Ghost> ghost = Optional.empty();
  private String chosen = "";
  private boolean bringsChosen;

  /** Shows nothing yet. */
  public CalendarView(CalendarWords words, CalendarGestures gestures) {
    this.words = words;
    getStyleClass().add("calendar-view");
    getStylesheets().add(CalendarView.class.getResource("calendar.css").toExternalForm());
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(200, 120);
    down.setOrientation(Orientation.VERTICAL);
    getChildren().addAll(tones.labels());
    getChildren().addAll(canvas, along, down);
    along.valueProperty().addListener((property, was, is) -> scrollTo(is.doubleValue()));
    down.valueProperty().addListener(changed -> requestLayout());
    focusedProperty().addListener(changed -> requestLayout());
    addEventHandler(ScrollEvent.SCROLL, this::wheel);
    new CalendarPointer(this, gestures).listen();
  }

  /** Shows another run of firings; the time that is seen stays where that can be. */
  public void show(CalendarPicture other) {
    boolean same =
        picture
            .filter(one -> one.from().equals(other.from()) && one.to().equals(other.to()))
            .isPresent();
    picture = Optional.of(other);
    if (!same) {
      window = Optional.empty();
    }
    requestLayout();
  }

  /** Marks a firing as the chosen one and brings it into sight. */
  public void mark(String firingId) {
    chosen = firingId;
    bringsChosen = true;
    requestLayout();
  }

  /** Shows where a firing would stand that is moved; empty when none is. */
  public void hover(Optional<Ghost> other) {
    ghost = other;
    ghost.ifPresent(one -> window = window.map(seen -> seen.showing(one.times().busy())));
    requestLayout();
  }

  /** A step larger about the middle. */
  public void zoomIn() {
    zoom(STEP, canvas.getWidth() / 2);
  }

  /** A step smaller about the middle. */
  public void zoomOut() {
    zoom(1 / STEP, canvas.getWidth() / 2);
  }

  /** Shows all there is. */
  public void fit() {
    window = Optional.empty();
    requestLayout();
  }

  /** Shows so many days, the chosen firing among them. */
  public void showDays(int days) {
    window = window.map(seen -> seen.ofDays(days));
    bringsChosen = true;
    requestLayout();
  }

  private void zoom(double factor, double x) {
    window = window.map(seen -> seen.zoomed(factor, x));
    requestLayout();
  }

  private void scrollTo(double left) {
    window = window.map(seen -> seen.scrolled(left - seen.left()));
    requestLayout();
  }

  void scrollBy(double pixels) {
    window = window.map(seen -> seen.scrolled(pixels));
    requestLayout();
  }

  private void wheel(ScrollEvent event) {
    if (event.isShortcutDown()) {
      zoom(event.getDeltaY() > 0 ? STEP : 1 / STEP, event.getX());
    } else {
      scrollBy(event.getDeltaX() != 0 ? -event.getDeltaX() : -event.getDeltaY());
    }
    event.consume();
  }

  /** The size of its letters in pixels. */
  public double letters() {
    return tones.em();
  }

  /** Where everything lies now; empty before anything is shown. */
  Optional<CalendarLayout> laidOut() {
    return picture.flatMap(
        shown -> window.map(seen -> new CalendarLayout(shown, seen, tones.em(), down.getValue())));
  }

  @Override
  protected double computePrefHeight(double width) {
    double bar = along.prefHeight(-1);
    return laidOut().map(CalendarLayout::height).orElse(300.0) + bar;
  }

  @Override
  protected void layoutChildren() {
    double bar = Math.ceil(along.prefHeight(-1));
    double width = Math.max(1, Math.floor(getWidth()) - bar);
    double height = Math.max(1, Math.floor(getHeight()) - bar);
    canvas.setWidth(width);
    canvas.setHeight(height);
    along.resizeRelocate(0, height, width, bar);
    down.resizeRelocate(width, 0, bar, height);
    picture.ifPresent(shown -> seen(shown, width));
    laidOut().ifPresent(layout -> bars(layout, height));
    if (bringsChosen) {
      bringsChosen = false;
      laidOut().ifPresent(layout -> bringRow(layout, height));
    }
    canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
    laidOut().ifPresent(layout -> paint(layout, width, height));
  }

  private void seen(CalendarPicture shown, double width) {
    TimeWindow now =
        window
            .map(seen -> seen.wide(width))
            .orElseGet(() -> TimeWindow.whole(shown.from(), shown.to(), width));
    if (bringsChosen) {
      now = shown.bar(chosen).map(bar -> bar.times().busy()).map(now::showing).orElse(now);
    }
    window = Optional.of(now);
  }

  private void bars(CalendarLayout layout, double height) {
    TimeWindow seen = layout.window();
    along.setMax(Math.max(0, seen.length() - seen.width()));
    along.setVisibleAmount(seen.width() / Math.max(1, seen.length()) * along.getMax());
    along.setValue(seen.left());
    along.setVisible(along.getMax() > 0.5);
    down.setMax(Math.max(0, layout.height() - height));
    down.setVisibleAmount(height / Math.max(1, layout.height()) * down.getMax());
    down.setValue(Math.min(down.getValue(), down.getMax()));
    down.setVisible(down.getMax() > 0.5);
  }

  /** Scrolls as little as possible so that the row of the chosen firing is seen. */
  private void bringRow(CalendarLayout layout, double height) {
    layout
        .picture()
        .bar(chosen)
        .flatMap(bar -> layout.row(bar.kilnId()))
        .ifPresent(
            row -> {
              double top = layout.rowTop(row) - layout.header();
              double below = layout.rowTop(row) + layout.rowHeight() - height;
              double by = top < 0 ? top : Math.max(0, Math.min(top, below));
              down.setValue(Math.max(0, Math.min(down.getMax(), down.getValue() + by)));
            });
  }

  private void paint(CalendarLayout layout, double width, double height) {
    GraphicsContext context = canvas.getGraphicsContext2D();
    Brush brush = new Brush(context, tones);
    DayPainter days = new DayPainter(layout, brush, words);
    BarPainter bars = new BarPainter(layout, brush, words);
    days.rows();
    CalendarPicture shown = layout.picture();
    shown.bars().forEach(bar -> bars.bar(bar, false));
    shown.bar(chosen).ifPresent(bar -> bars.bar(bar, true));
    ghost.ifPresent(bars::ghost);
    days.header();
    if (isFocused()) {
      brush.outline(new CalendarLayout.Box(0, 0, width, height), Tone.EMBER, 2);
    }
  }
}
