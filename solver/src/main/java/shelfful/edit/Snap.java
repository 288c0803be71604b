package shelfful.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.inspect.PlaceFigure;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * Draws a piece that is held near its neighbours to rest against them: between two where both are
 * within reach, else against one, and only where all other distances are kept as well.
 *
 * <p>The place is found by Newton's method on the spare distances, whose rate of change is the
 * direction the judge gives with each; a place of whole micrometres a hair on the safe side of
 * contact ends it.
 */
final class Snap {
  /** What is aimed at over the exact distance, in micrometres; rounding takes less than half. */
  private static final double AIM = 2;

  /** So near contact is at rest, in micrometres. */
  private static final double AT_REST = 4;

  private static final int MOST_STEPS = 8;
  private static final int MOST_CONTACTS = 6;

  /** The sine under which two things push in one direction and leave no corner between them. */
  private static final double LEAST_CORNER = 0.05;

  private final Hand hand;
  private final Tentative start;
  private final double within;

  Snap(Hand hand, Tentative start, Length within) {
    this.hand = hand;
    this.start = start;
    this.within = within.micrometres();
  }

  Tentative drawn() {
    List<PlaceFigure> near =
        start.figures().stream()
            .filter(PlaceFigure::isInThePlan)
            .filter(figure -> Math.abs(figure.spare().micrometres()) <= within)
            .sorted((a, b) -> Long.compare(size(a), size(b)))
            .limit(MOST_CONTACTS)
            .toList();
    Optional<Tentative> corner = Optional.empty();
    for (int i = 0; i < near.size(); i++) {
      for (int j = i + 1; j < near.size(); j++) {
        corner = nearer(corner, at(List.of(near.get(i), near.get(j))));
      }
    }
    if (corner.isPresent()) {
      return corner.get();
    }
    Optional<Tentative> side = Optional.empty();
    for (PlaceFigure figure : near) {
      side = nearer(side, at(List.of(figure)));
    }
    return side.orElse(start);
  }

  private static long size(PlaceFigure figure) {
    return Math.abs(figure.spare().micrometres());
  }

  private Optional<Tentative> nearer(Optional<Tentative> best, Optional<Tentative> other) {
    return best.isEmpty() || other.filter(one -> way(one) < way(best.get())).isPresent()
        ? other
        : best;
  }

  private double way(Tentative other) {
    Point from = start.place().at();
    Point to = other.place().at();
    return Math.hypot(to.x().minus(from.x()).micrometres(), to.y().minus(from.y()).micrometres());
  }

  /** At rest against the given things, where all is kept within reach. */
  private Optional<Tentative> at(List<PlaceFigure> contacts) {
    Tentative held = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      List<PlaceFigure> now = again(held, contacts);
      if (now.size() < contacts.size() || way(held) > within) {
        return Optional.empty();
      }
      if (now.stream().allMatch(Snap::isAtRest)) {
        return Optional.of(held).filter(Tentative::mayStand);
      }
      Optional<Tentative> next = stepped(held, now);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      held = next.get();
    }
    return Optional.empty();
  }

  private static boolean isAtRest(PlaceFigure figure) {
    return figure.holds() && figure.spare().micrometres() <= AT_REST;
  }

  private static List<PlaceFigure> again(Tentative held, List<PlaceFigure> contacts) {
    List<PlaceFigure> now = new ArrayList<>();
    for (PlaceFigure contact : contacts) {
      held.figures().stream()
          .filter(one -> one.rule() == contact.rule() && one.other().equals(contact.other()))
          .findFirst()
          .ifPresent(now::add);
    }
    return now;
  }

  private Optional<Tentative> stepped(Tentative held, List<PlaceFigure> now) {
    PlaceFigure.Line a = now.get(0).line();
    double shortA = AIM - now.get(0).spare().micrometres();
    if (now.size() == 1) {
      return Optional.of(shifted(held, shortA * a.awayX(), shortA * a.awayY()));
    }
    PlaceFigure.Line b = now.get(1).line();
    double shortB = AIM - now.get(1).spare().micrometres();
    double corner = a.awayX() * b.awayY() - a.awayY() * b.awayX();
    if (Math.abs(corner) < LEAST_CORNER) {
      return Optional.empty();
    }
    return Optional.of(
        shifted(
            held,
            (shortA * b.awayY() - shortB * a.awayY()) / corner,
            (shortB * a.awayX() - shortA * b.awayX()) / corner));
  }

  private Tentative shifted(Tentative held, double x, double y) {
    Placement place = held.place();
    Point at =
        new Point(
            new Length(place.at().x().micrometres() + Math.round(x)),
            new Length(place.at().y().micrometres() + Math.round(y)));
    return hand.over(
        held.layerId(), new Placement(place.pieceId(), at, place.turn(), place.onCatcher()));
  }
}
