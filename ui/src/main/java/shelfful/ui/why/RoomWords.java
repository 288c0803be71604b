package shelfful.ui.why;

import java.util.OptionalInt;
import shelfful.ui.words.Words;

/**
 * How near a load is to the most that was proved possible. "Full" is said only where the two are
 * equal and the load breaks no rule.
 */
public record RoomWords(Words words) {

  /**
   * The line; empty text while the limit is not known.
   *
   * @param placed how many are in
   * @param most how many no setting can exceed, where that was worked out
   * @param sound whether the load keeps every rule
   */
  public String of(int placed, OptionalInt most, boolean sound) {
    if (most.isEmpty()) {
      return "";
    }
    if (placed >= most.getAsInt()) {
      return sound ? words.of("room.full", placed) : words.of("room.most", placed);
    }
    return words.of("room.more", placed, most.getAsInt() - placed, most.getAsInt());
  }
}
