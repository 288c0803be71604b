package shelfful.packing;

import java.util.Objects;
import shelfful.geometry.Pose;

/**
 * A body where it stands.
 *
 * @param kind index into the question's kinds
 * @param pose in the shelf's frame
 */
public record Placed(int kind, Pose pose) {
  /** Refuses a negative kind. */
  public Placed {
    Objects.requireNonNull(pose, "pose");
    if (kind < 0) {
      throw new IllegalArgumentException("kind must be an index but is " + kind);
    }
  }
}
