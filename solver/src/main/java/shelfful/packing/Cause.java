package shelfful.packing;

/** Why bodies do not fit. */
public enum Cause {
  /** Proven: bodies and half their clearances need more area than there is. */
  AREA,
  /** Proven: one body alone is too large for the shelf. */
  TOO_LARGE,
  /** Proven: two of the bodies cannot both stand on the shelf. */
  PAIRWISE,
  /** Proven: more bodies than the bound for points at mutual distance allows. */
  BOUND,
  /** Not proven: no setting was found with the effort given. */
  NOT_FOUND;

  /** Whether the cause proves that no setting exists. */
  public boolean isProof() {
    return this != NOT_FOUND;
  }
}
