package shelfful.packing;

import java.util.List;

/**
 * Where bodies may stand on one shelf.
 *
 * @param rooms all must be kept; at least one
 * @param obstacles all must be kept clear of
 */
public record ShelfSpace(List<Room> rooms, List<Obstacle> obstacles) {
  /** Copies both lists; refuses a space without any room. */
  public ShelfSpace {
    rooms = List.copyOf(rooms);
    obstacles = List.copyOf(obstacles);
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a shelf space needs at least one room");
    }
  }

  /** One room and nothing in the way. */
  public static ShelfSpace of(Room room) {
    return new ShelfSpace(List.of(room), List.of());
  }
}
