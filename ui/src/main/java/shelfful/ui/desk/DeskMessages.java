package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.ui.words.Words;

/**
 * What the desk says: a line of how things stand, and a message under it. Used on the screen's
 * thread alone.
 */
final class DeskMessages {
  private final Words words;
  private final ReadOnlyStringWrapper state = new ReadOnlyStringWrapper();
  private final ReadOnlyObjectWrapper<Optional<Notice>> notice =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private String end = "";

  DeskMessages(Words words) {
    this.words = words;
    state.set(words.of("state.empty"));
  }

  /** How things stand, in a line. */
  ReadOnlyStringProperty state() {
    return state.getReadOnlyProperty();
  }

  /** The message; empty when there is none. */
  ReadOnlyObjectProperty<Optional<Notice>> notice() {
    return notice.getReadOnlyProperty();
  }

  void tell(Notice other) {
    notice.set(Optional.of(other));
  }

  void failed(Throwable fault) {
    tell(new Notice(words.of("notice.fault", fault), List.of()));
  }

  /** Takes the message away. */
  void close() {
    notice.set(Optional.empty());
  }

  /** Says something in the line of state for a while; nothing else changes. */
  void sayForNow(String line) {
    state.set(line);
  }

  /** What the line of state ends with from the next time on. */
  void endWith(String other) {
    end = other;
  }

  /**
   * Says how things stand.
   *
   * @param most that any setting can hold, where it is known
   */
  void say(Optional<ShownLoad> shown, OptionalInt most) {
    state.set(shown.map(load -> new StateWords(words).of(load, most, end)).orElse(end));
  }
}
