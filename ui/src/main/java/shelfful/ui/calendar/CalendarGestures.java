package shelfful.ui.calendar;

import java.time.LocalDateTime;

/** Who is told what is done to a calendar by hand. */
public interface CalendarGestures {

  /** A firing is chosen. */
  void choose(String firingId);

  /** A firing is to be opened. */
  void open(String firingId);

  /** A firing is held over a kiln so that it would be loaded at a moment. */
  void carry(String firingId, String kilnId, LocalDateTime loads);

  /** It is let go where it is. */
  void drop();

  /** It is put back. */
  void putBack();
}
