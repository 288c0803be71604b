package shelfful.ware;

import java.util.Optional;
import shelfful.measure.Length;

/**
 * Two glazes that mark each other (fuming, flashing) and how far apart they must be kept.
 *
 * @param glazeId one of them
 * @param otherGlazeId the other; may not be the same
 * @param apartness how far apart
 * @param distance for {@link Apartness#BY_DISTANCE}: the least distance between outlines; empty
 *     otherwise
 */
public record KeptApart(
    String glazeId, String otherGlazeId, Apartness apartness, Optional<Length> distance) {
  /** Refuses a glaze kept apart from itself, and a distance where none belongs or none is given. */
  public KeptApart {
    if (glazeId.equals(otherGlazeId)) {
      throw new IllegalArgumentException("A glaze cannot be kept apart from itself: " + glazeId);
    }
    if (distance.isPresent() != (apartness == Apartness.BY_DISTANCE)) {
      throw new IllegalArgumentException(
          "A distance belongs to glazes kept apart by distance, and only to those");
    }
  }

  /** Whether the rule is about these two, in either order. */
  public boolean isAbout(String one, String other) {
    return glazeId.equals(one) && otherGlazeId.equals(other)
        || glazeId.equals(other) && otherGlazeId.equals(one);
  }

  /** The three strengths. */
  public enum Apartness {
    NOT_IN_ONE_FIRING,
    NOT_ON_ONE_LAYER,
    BY_DISTANCE
  }
}
