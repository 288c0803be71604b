package shelfful.ware;

/** The two kinds of firing, each with the stage its ware goes in at. */
public enum FiringKind {
  BISQUE(Stage.BONE_DRY),
  GLAZE(Stage.GLAZED);

  private final Stage goesIn;

  FiringKind(Stage goesIn) {
    this.goesIn = goesIn;
  }

  /** The stage a piece must be at to go into such a firing. */
  public Stage goesIn() {
    return goesIn;
  }
}
