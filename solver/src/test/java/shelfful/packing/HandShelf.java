package shelfful.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import shelfful.geometry.DiscBound;
import shelfful.geometry.Pose;

/**
 * A shelf as a careful hand fills it: every piece as far back as it goes, there as far left as it
 * goes, its handle in whichever of four directions goes first. Rows come out staggered by
 * themselves. Nothing once set is moved again. Places are tried every 5 mm.
 */
public final class HandShelf {
  private static final double APART = 5;
  private static final double QUARTER = Math.PI / 2;

  private final ShelfQuestion question;
  private final HandDistances distances;
  private final DiscBound round;
  private final int across;
  private final List<Placed> bodies = new ArrayList<>();

  /** Where to go on looking for a kind: what was too narrow for it stays so. */
  private final Map<Integer, Integer> next = new HashMap<>();

  /**
   * An empty shelf.
   *
   * @param question with every kind that may come; its counts do not matter
   * @param distances of these kinds
   */
  public HandShelf(ShelfQuestion question, HandDistances distances) {
    this.question = question;
    this.distances = distances;
    this.round = question.space().rooms().get(0).region().boundingDisc();
    this.across = (int) Math.ceil(2 * round.radius() / APART) + 1;
  }

  /** Sets one more of a kind; false when there is no place for it. */
  public boolean add(int kind) {
    int turns = question.kinds().get(kind).mayTurn() ? 4 : 1;
    for (int i = next.getOrDefault(kind, 0); i < across * across; i++) {
      for (int turn = 0; turn < turns; turn++) {
        Placed body = new Placed(kind, pose(i, turn));
        if (goes(body)) {
          bodies.add(body);
          next.put(kind, i + 1);
          return true;
        }
      }
    }
    next.put(kind, across * across);
    return false;
  }

  /** Takes the last one of a kind away again. */
  public void remove(int kind) {
    for (int i = bodies.size() - 1; i >= 0; i--) {
      if (bodies.get(i).kind() == kind) {
        bodies.remove(i);
        return;
      }
    }
  }

  /**
   * Takes away a body that would be in the way in another space.
   *
   * @return its kind; empty when all may stay
   */
  public OptionalInt takeWhatIsInTheWay(ShelfSpace other) {
    ShelfQuestion there =
        new ShelfQuestion(other, question.kinds(), question.counts(), question.clearance());
    for (int i = 0; i < bodies.size(); i++) {
      Placed body = bodies.get(i);
      if (!isFree(there.space(), body)) {
        bodies.remove(i);
        return OptionalInt.of(body.kind());
      }
    }
    return OptionalInt.empty();
  }

  /** What stands here as an answer of the packer's. */
  public Packed packed() {
    List<Placed> byKind = new ArrayList<>(bodies);
    byKind.sort(Comparator.comparingInt(Placed::kind));
    return new Packed(byKind, 0);
  }

  private Pose pose(int index, int turn) {
    double x = round.x() - round.radius() + APART * (index % across);
    double y = round.y() + round.radius() - APART * (index / across);
    return new Pose(x, y, turn * QUARTER);
  }

  /** Whether a body keeps clear of what the shelf itself has round it and on it. */
  private boolean isFree(ShelfSpace space, Placed body) {
    BodyKind kind = question.kinds().get(body.kind());
    return Spare.inRooms(space, kind, body.pose()) >= 0
        && Spare.fromObstacles(space, kind, body.pose()) >= 0;
  }

  private boolean goes(Placed body) {
    Pose at = body.pose();
    if (Math.hypot(at.x() - round.x(), at.y() - round.y()) > round.radius()) {
      return false;
    }
    for (Placed other : bodies) {
      if (distance(body, other) < distances.least(body.kind(), other.kind())) {
        return false;
      }
    }
    if (!isFree(question.space(), body)) {
      return false;
    }
    for (Placed other : bodies) {
      boolean far = distance(body, other) > distances.most(body.kind(), other.kind());
      if (!far && Spare.between(question, body, other) < 0) {
        return false;
      }
    }
    return true;
  }

  private static double distance(Placed a, Placed b) {
    return Math.hypot(a.pose().x() - b.pose().x(), a.pose().y() - b.pose().y());
  }
}
