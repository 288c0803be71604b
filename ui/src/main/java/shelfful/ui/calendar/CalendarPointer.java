package shelfful.ui.calendar;

import java.time.LocalDateTime;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import shelfful.ui.calendar.CalendarPicture.Bar;

/** What the mouse does to a calendar: choose, open, carry a firing, or move the picture. */
final class CalendarPointer {
  /** A press that moves less than this is a click. */
  private static final double STILL = 4;

  private final CalendarView view;
  private final CalendarGestures gestures;
  private Optional<Bar> held = Optional.empty();
  private boolean carries;
  private double pressedX;
  private double pressedY;
  private double lastX;

  CalendarPointer(CalendarView view, CalendarGestures gestures) {
    this.view = view;
    this.gestures = gestures;
  }

  void listen() {
    view.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    view.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    view.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    view.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
  }

  private void pressed(MouseEvent event) {
    if (event.getButton() != MouseButton.PRIMARY) {
      return;
    }
    view.requestFocus();
    pressedX = event.getX();
    pressedY = event.getY();
    lastX = pressedX;
    carries = false;
    held = view.laidOut().flatMap(layout -> layout.barAt(event.getX(), event.getY()));
    held.ifPresent(bar -> gestures.choose(bar.id()));
    if (event.getClickCount() == 2) {
      held.ifPresent(bar -> gestures.open(bar.id()));
      held = Optional.empty();
    }
  }

  private void dragged(MouseEvent event) {
    if (!event.isPrimaryButtonDown()) {
      return;
    }
    double away = Math.hypot(event.getX() - pressedX, event.getY() - pressedY);
    carries |= held.isPresent() && away > STILL;
    if (carries) {
      carry(held.orElseThrow(), event);
    } else if (held.isEmpty()) {
      view.scrollBy(lastX - event.getX());
    }
    lastX = event.getX();
  }

  private void carry(Bar bar, MouseEvent event) {
    view.laidOut()
        .ifPresent(
            layout -> {
              double from = layout.window().x(bar.times().loads());
              LocalDateTime loads = layout.window().time(from + event.getX() - pressedX);
              layout.kilnAt(event.getY()).ifPresent(kiln -> gestures.carry(bar.id(), kiln, loads));
            });
  }

  private void released(MouseEvent event) {
    if (carries) {
      gestures.drop();
    }
    forget();
  }

  /** Escape puts back what is carried, before anybody else hears of it. */
  private void key(KeyEvent event) {
    if (carries && event.getCode() == KeyCode.ESCAPE) {
      forget();
      gestures.putBack();
      event.consume();
    }
  }

  private void forget() {
    held = Optional.empty();
    carries = false;
  }
}
