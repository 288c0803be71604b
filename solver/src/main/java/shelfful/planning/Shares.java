package shelfful.planning;

import java.util.List;

/**
 * How lots draw on the same pieces: a pile is a lot of its own, made of pieces that could also
 * stand alone or be piled otherwise. Where nothing is piled every lot has pieces of its own.
 */
final class Shares {
  /** By lot, then by single lot: how many pieces of it one body takes. */
  private final int[][] takes;

  private final int singles;

  /**
   * @param lots those of single pieces first, towers after them
   * @param singles how many lots are of single pieces
   */
  Shares(List<Lot> lots, int singles) {
    this.singles = singles;
    this.takes = new int[lots.size()][];
    for (int lot = singles; lot < takes.length; lot++) {
      Tower tower = lots.get(lot).tower().orElseThrow();
      takes[lot] = new int[singles];
      for (int single = 0; single < singles; single++) {
        takes[lot][single] = tower.takes(lots.get(single));
      }
    }
  }

  /** Whether any pieces can be set in more than one way. */
  boolean isAnything() {
    return takes.length > singles;
  }

  /** Whether a lot is of piles. */
  boolean isTower(int lot) {
    return lot >= singles;
  }

  /** How many pieces of a single lot one body of a lot takes. */
  int takes(int lot, int single) {
    if (lot < singles) {
      return lot == single ? 1 : 0;
    }
    return takes[lot][single];
  }

  /** By single lot, the pieces that so many bodies of each lot take; 0 for towers. */
  int[] pieces(int[] bodies) {
    if (!isAnything()) {
      return bodies;
    }
    int[] pieces = new int[bodies.length];
    for (int lot = 0; lot < bodies.length; lot++) {
      if (bodies[lot] > 0) {
        use(pieces, lot, -bodies[lot]);
      }
    }
    return pieces;
  }

  /** Takes the pieces of so many bodies from what is left of each single lot. */
  void use(int[] left, int lot, int bodies) {
    if (lot < singles) {
      left[lot] -= bodies;
      return;
    }
    for (int single = 0; single < singles; single++) {
      left[single] -= bodies * takes[lot][single];
    }
  }

  /** How many bodies of a lot can be made of the pieces left. */
  int most(int[] left, int lot) {
    if (lot < singles) {
      return left[lot];
    }
    int most = Integer.MAX_VALUE;
    for (int single = 0; single < singles; single++) {
      if (takes[lot][single] > 0) {
        most = Math.min(most, left[single] / takes[lot][single]);
      }
    }
    return most;
  }
}
