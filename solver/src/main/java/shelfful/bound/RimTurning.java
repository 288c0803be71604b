package shelfful.bound;

/** How the rim of a room turns. */
interface RimTurning {
  /**
   * A turning such that every convex cell with more of it along one stretch of the rim has an area,
   * less a saving for each length of that stretch, of at least a target; at most a full turn.
   */
  double mostTurning(double target, double saving);
}
