package shelfful.ui.week;

import javafx.scene.input.KeyEvent;
import shelfful.ui.calendar.CalendarView;

/** What the keys do while the calendar has the focus. */
record WeekKeys(WeekViewModel model, CalendarView calendar, WeekPlaces places) {

  void listen() {
    calendar.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
  }

  private void pressed(KeyEvent event) {
    boolean done =
        !event.isShortcutDown()
            && !event.isAltDown()
            && (event.isShiftDown() ? carry(event) : walk(event) || act(event));
    if (done) {
      event.consume();
    }
  }

  private boolean carry(KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> model.carry().byDays(-1);
      case RIGHT -> model.carry().byDays(1);
      case UP -> model.carry().byKilns(-1);
      case DOWN -> model.carry().byKilns(1);
      case PLUS, EQUALS -> calendar.zoomIn();
      default -> {
        return false;
      }
    }
    return true;
  }

  private boolean walk(KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> model.chooseAfter(-1);
      case RIGHT -> model.chooseAfter(1);
      case UP -> model.chooseKilnAfter(-1);
      case DOWN -> model.chooseKilnAfter(1);
      case PAGE_UP -> model.chooseDayAfter(-1);
      case PAGE_DOWN -> model.chooseDayAfter(1);
      default -> {
        return false;
      }
    }
    return true;
  }

  private boolean act(KeyEvent event) {
    switch (event.getCode()) {
      case ENTER -> setDownOrOpen();
      case ESCAPE -> model.carry().putBack();
      case F -> model.freezeOrRelease();
      case PLUS, ADD, EQUALS -> calendar.zoomIn();
      case MINUS, SUBTRACT -> calendar.zoomOut();
      case DIGIT0, NUMPAD0 -> calendar.fit();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void setDownOrOpen() {
    if (model.carry().carries()) {
      model.carry().drop();
    } else {
      OpenedFiring.of(model).ifPresent(places::onDesk);
    }
  }
}
