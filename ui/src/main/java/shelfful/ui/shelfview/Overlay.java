package shelfful.ui.shelfview;

import java.util.List;
import java.util.Optional;
import shelfful.drawing.Mark;
import shelfful.drawing.Spot;

/**
 * What lies over the paper while a piece is in the hand.
 *
 * @param marks of the piece itself, on the first sheet
 * @param measure the nearest distance
 */
public record Overlay(List<Mark> marks, Optional<Measure> measure) {
  public static final Overlay NONE = new Overlay(List.of(), Optional.empty());

  /** Takes its own copy. */
  public Overlay {
    marks = List.copyOf(marks);
  }

  /**
   * A line between two things with its figure.
   *
   * @param from on the piece, on the first sheet
   * @param to on the other thing
   * @param figure as short as it can be said
   * @param forbidden whether the distance falls short
   */
  public record Measure(Spot from, Spot to, String figure, boolean forbidden) {}
}
