package shelfful.inspect;

/**
 * An ellipse.
 *
 * @param middle of it
 * @param halfWidth half the axis along {@code axis}
 * @param halfDepth half the axis across it
 * @param axis unit vector along its width
 */
record Ellipse(Vector middle, double halfWidth, double halfDepth, Vector axis)
    implements Footprint {

  /** The support point of an ellipse: (a²p, b²q) / √(a²p² + b²q²) for a direction (p, q). */
  @Override
  public Vector farthest(Vector direction) {
    Vector across = axis.quarterTurned();
    double p = halfWidth * direction.dot(axis);
    double q = halfDepth * direction.dot(across);
    double length = Math.sqrt(p * p + q * q);
    return middle
        .plus(axis.times(halfWidth * p / length))
        .plus(across.times(halfDepth * q / length));
  }

  @Override
  public double radius() {
    return 0;
  }

  @Override
  public double reach() {
    return Math.max(halfWidth, halfDepth);
  }
}
