package shelfful.inspect;

import shelfful.inspect.Finding.Severity;

/** Every rule of a setting by the id it has in docs/rules.md, where its exact meaning stands. */
public enum Rule {
  FIGURE_BEYOND_REASON("figureBeyondReason", Severity.BREAKS),
  IDS_KNOWN_AND_UNIQUE("idsKnownAndUnique", Severity.BREAKS),
  PIECE_ACCOUNTED_FOR_ONCE("pieceAccountedForOnce", Severity.BREAKS),
  PIECE_AT_WRONG_STAGE("pieceAtWrongStage", Severity.BREAKS),
  CONE_OUT_OF_TOLERANCE("coneOutOfTolerance", Severity.BREAKS),
  ATMOSPHERE_WRONG("atmosphereWrong", Severity.BREAKS),
  KILN_TOO_HOT("kilnTooHot", Severity.BREAKS),
  GLAZED_PIECE_WITHOUT_GLAZE_FIRING("glazedPieceWithoutGlazeFiring", Severity.BREAKS),
  PIECES_TOO_CLOSE("piecesTooClose", Severity.BREAKS),
  PIECE_TOO_CLOSE_TO_POST("pieceTooCloseToPost", Severity.BREAKS),
  PIECE_TOO_CLOSE_TO_WALL("pieceTooCloseToWall", Severity.BREAKS),
  PIECE_TOO_CLOSE_TO_KEEP_OUT("pieceTooCloseToKeepOut", Severity.BREAKS),
  PIECE_HITS_SHELF("pieceHitsShelf", Severity.BREAKS),
  PIECE_TALLER_THAN_HEADROOM_ALLOWS("pieceTallerThanHeadroomAllows", Severity.BREAKS),
  PIECE_TOO_CLOSE_TO_LID("pieceTooCloseToLid", Severity.BREAKS),
  FOOT_OVER_EDGE("footOverEdge", Severity.BREAKS),
  BODY_OVER_EDGE("bodyOverEdge", Severity.BREAKS),
  CATCHER_MISSING("catcherMissing", Severity.BREAKS),
  SHELF_OVERLOADED("shelfOverloaded", Severity.BREAKS),
  PIECE_FLOATS("pieceFloats", Severity.BREAKS),
  PILE_NOT_ALLOWED("pileNotAllowed", Severity.BREAKS),
  PILE_TOO_HIGH("pileTooHigh", Severity.BREAKS),
  PILE_TOO_HEAVY("pileTooHeavy", Severity.BREAKS),
  PIECE_WIDER_THAN_HOLLOW("pieceWiderThanHollow", Severity.BREAKS),
  SHELF_NOT_IN_PLACE("shelfNotInPlace", Severity.BREAKS),
  SHELVES_OUT_OF_STOCK("shelvesOutOfStock", Severity.BREAKS),
  POSTS_OUT_OF_STOCK("postsOutOfStock", Severity.BREAKS),
  POST_WRONG("postWrong", Severity.BREAKS),
  POST_NOT_IN_PLACE("postNotInPlace", Severity.BREAKS),
  POST_NOT_ON_POST("postNotOnPost", Severity.BREAKS),
  POST_LENGTH_WRONG("postLengthWrong", Severity.BREAKS),
  SHELF_UNSUPPORTED("shelfUnsupported", Severity.BREAKS),
  SHELVES_COLLIDE("shelvesCollide", Severity.BREAKS),
  POSTS_COLLIDE("postsCollide", Severity.BREAKS),
  SHELF_TOO_CLOSE_TO_WALL("shelfTooCloseToWall", Severity.BREAKS),
  SHELF_MEETS_KEEP_OUT("shelfMeetsKeepOut", Severity.BREAKS),
  SHELF_TOO_LOW("shelfTooLow", Severity.BREAKS),
  COLUMN_TALLER_THAN_CHAMBER("columnTallerThanChamber", Severity.BREAKS),
  COLUMN_TOPS_DISAGREE("columnTopsDisagree", Severity.BREAKS),
  KEPT_APART_IN_ONE_FIRING("keptApartInOneFiring", Severity.BREAKS),
  KEPT_APART_ON_ONE_LAYER("keptApartOnOneLayer", Severity.BREAKS),
  KEPT_APART_TOO_CLOSE("keptApartTooClose", Severity.BREAKS),
  ZONE_FORBIDDEN("zoneForbidden", Severity.BREAKS),
  SET_SPLIT("setSplit", Severity.BREAKS),
  PINNED_PIECE_MOVED("pinnedPieceMoved", Severity.BREAKS),
  LOCKED_LAYER_CHANGED("lockedLayerChanged", Severity.BREAKS),
  LAYER_LOWER_THAN_WISHED("layerLowerThanWished", Severity.WISH),
  ZONE_NOT_LIKED("zoneNotLiked", Severity.WISH),
  ORDER_SPLIT("orderSplit", Severity.WISH);

  private final String id;
  private final Severity severity;

  Rule(String id, Severity severity) {
    this.id = id;
    this.severity = severity;
  }

  /** The id as it stands in docs/rules.md and in a {@link Finding}. */
  public String id() {
    return id;
  }

  /** Whether a load that breaks it may be used all the same. */
  public Severity severity() {
    return severity;
  }
}
