package shelfful.ui.week;

import java.time.LocalDateTime;
import shelfful.ui.calendar.CalendarGestures;

/** What the mouse does to the calendar. */
record WeekGestures(WeekViewModel model, WeekPlaces places) implements CalendarGestures {

  @Override
  public void choose(String firingId) {
    model.choose(firingId);
  }

  @Override
  public void open(String firingId) {
    model.choose(firingId);
    OpenedFiring.of(model).ifPresent(places::onDesk);
  }

  @Override
  public void carry(String firingId, String kilnId, LocalDateTime loads) {
    model.carry().carry(firingId, kilnId, loads);
  }

  @Override
  public void drop() {
    model.carry().drop();
  }

  @Override
  public void putBack() {
    model.carry().putBack();
  }
}
