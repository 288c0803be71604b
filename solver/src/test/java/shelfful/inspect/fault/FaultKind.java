package shelfful.inspect.fault;

import shelfful.inspect.Rule;

/** The faults that can be planted, each with the rule it is sure to break. */
public enum FaultKind {
  PIECE_MOVED_TOO_CLOSE(Rule.PIECES_TOO_CLOSE, PieceFaults::movedTooClose),
  GAP_WIDENED(Rule.PIECES_TOO_CLOSE, PieceFaults::gapWidened),
  PIECE_AGAINST_POST(Rule.PIECE_TOO_CLOSE_TO_POST, PieceFaults::againstPost),
  PIECE_AGAINST_WALL(Rule.PIECE_TOO_CLOSE_TO_WALL, PieceFaults::againstWall),
  KEEP_OUT_BESIDE_PIECE(Rule.PIECE_TOO_CLOSE_TO_KEEP_OUT, PieceFaults::keepOutBeside),
  PIECE_THROUGH_NEIGHBOURING_SHELF(Rule.PIECE_HITS_SHELF, PieceFaults::throughShelf),
  FOOT_OVER_EDGE(Rule.FOOT_OVER_EDGE, EdgeFaults::footOverEdge),
  FOOT_OVER_JOINT(Rule.FOOT_OVER_EDGE, EdgeFaults::footOverJoint),
  BELLY_OVER_EDGE(Rule.BODY_OVER_EDGE, EdgeFaults::bellyOverEdge),
  HEADROOM_SHORT(Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS, HeightFaults::headroomShort),
  LID_CLEARANCE_SHORT(Rule.PIECE_TOO_CLOSE_TO_LID, HeightFaults::lidClearanceShort),
  COLUMN_TOO_HIGH(Rule.COLUMN_TALLER_THAN_CHAMBER, HeightFaults::columnTooHigh),
  SHELF_TOO_LOW(Rule.SHELF_TOO_LOW, HeightFaults::shelfTooLow),
  COLUMN_TOPS_UNEQUAL(Rule.COLUMN_TOPS_DISAGREE, HeightFaults::columnTopsUnequal),
  LAYER_HEIGHTS_SWAPPED(Rule.POST_LENGTH_WRONG, HeightFaults::layerHeightsSwapped),
  LAYER_RAISED(Rule.POST_LENGTH_WRONG, HeightFaults::layerRaised),
  LAYERS_AT_ONE_HEIGHT(Rule.SHELVES_COLLIDE, HeightFaults::layersAtOneHeight),
  PIECE_LOST(Rule.PIECE_ACCOUNTED_FOR_ONCE, ListFaults::lost),
  PIECE_TWICE(Rule.PIECE_ACCOUNTED_FOR_ONCE, ListFaults::twice),
  PIECE_IN_BOTH_LISTS(Rule.PIECE_ACCOUNTED_FOR_ONCE, ListFaults::inBothLists),
  PIECE_UNKNOWN(Rule.IDS_KNOWN_AND_UNIQUE, ListFaults::unknown),
  SET_SPLIT(Rule.SET_SPLIT, ListFaults::setSplit),
  PINNED_PIECE_MOVED(Rule.PINNED_PIECE_MOVED, KeptFaults::pinnedMoved),
  PINNED_PIECE_TURNED(Rule.PINNED_PIECE_MOVED, KeptFaults::pinnedTurned),
  LOCKED_PIECE_MOVED(Rule.LOCKED_LAYER_CHANGED, KeptFaults::lockedMoved),
  LOCKED_POST_EXCHANGED(Rule.LOCKED_LAYER_CHANGED, KeptFaults::lockedPostExchanged),
  LAYER_ID_TWICE(Rule.IDS_KNOWN_AND_UNIQUE, ListFaults::layerIdTwice),
  COLUMN_PLAN_UNKNOWN(Rule.IDS_KNOWN_AND_UNIQUE, ListFaults::columnPlanUnknown),
  STAGE_WRONG(Rule.PIECE_AT_WRONG_STAGE, FiringFaults::stageWrong),
  CONE_WRONG(Rule.CONE_OUT_OF_TOLERANCE, FiringFaults::coneWrong),
  ATMOSPHERE_WRONG(Rule.ATMOSPHERE_WRONG, FiringFaults::atmosphereWrong),
  GLAZED_IN_BISQUE(Rule.GLAZED_PIECE_WITHOUT_GLAZE_FIRING, FiringFaults::glazedInBisque),
  KILN_TOO_HOT(Rule.KILN_TOO_HOT, FiringFaults::kilnTooHot),
  SHELF_TOO_HOT(Rule.KILN_TOO_HOT, FiringFaults::shelfTooHot),
  CATCHER_MISSING(Rule.CATCHER_MISSING, GlazeFaults::catcherMissing),
  CATCHER_NEEDLESS(Rule.CATCHER_MISSING, GlazeFaults::catcherNeedless),
  ZONE_FORBIDDEN(Rule.ZONE_FORBIDDEN, GlazeFaults::zoneForbidden),
  KEPT_APART_IN_ONE_FIRING(Rule.KEPT_APART_IN_ONE_FIRING, GlazeFaults::keptApartInFiring),
  KEPT_APART_ON_ONE_LAYER(Rule.KEPT_APART_ON_ONE_LAYER, GlazeFaults::keptApartOnLayer),
  KEPT_APART_TOO_CLOSE(Rule.KEPT_APART_TOO_CLOSE, GlazeFaults::keptApartTooClose),
  PILE_TOO_HIGH(Rule.PILE_TOO_HIGH, PileFaults::tooHigh),
  PILE_TOO_HEAVY(Rule.PILE_TOO_HEAVY, PileFaults::tooHeavy),
  PILE_WITH_WRONG_FORM_INSIDE(Rule.PILE_NOT_ALLOWED, PileFaults::wrongFormInside),
  PILE_NOT_ALLOWED(Rule.PILE_NOT_ALLOWED, PileFaults::notAllowed),
  PILE_WITH_TOP_WRONG_WAY_UP(Rule.PILE_NOT_ALLOWED, PileFaults::wrongWayUp),
  PILE_IN_TOO_NARROW_HOLLOW(Rule.PIECE_WIDER_THAN_HOLLOW, PileFaults::hollowTooNarrow),
  PILE_WITH_FLOATING_TOP(Rule.PIECE_FLOATS, PileFaults::floating),
  PILE_WITH_SUNK_TOP(Rule.PIECE_FLOATS, PileFaults::sunk),
  PILE_WITH_TOP_OFF_CENTRE(Rule.PIECE_FLOATS, PileFaults::offCentre),
  PILE_WITH_TOP_TURNED(Rule.PIECE_FLOATS, PileFaults::turnedOtherwise),
  PILE_WITHOUT_CARRIER(Rule.PIECE_FLOATS, PileFaults::carriedByNobody),
  PILES_TOO_CLOSE(Rule.PIECES_TOO_CLOSE, PileFaults::pilesTooClose),
  PILE_HEADROOM_SHORT(Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS, PileFaults::headroomShort),
  SHELF_OVERLOADED(Rule.SHELF_OVERLOADED, ShelfFaults::overloaded),
  SHELF_STOLEN(Rule.SHELVES_OUT_OF_STOCK, ShelfFaults::stolen),
  SHELF_LEFT_OUT(Rule.SHELF_NOT_IN_PLACE, ShelfFaults::leftOut),
  SHELF_IN_NO_PLACE(Rule.SHELF_NOT_IN_PLACE, ShelfFaults::inNoPlace),
  SHELF_OF_WRONG_KIND(Rule.SHELF_NOT_IN_PLACE, ShelfFaults::ofWrongKind),
  SHELF_THROUGH_WALL(Rule.SHELF_TOO_CLOSE_TO_WALL, ShelfFaults::throughWall),
  SHELF_IN_PEEPHOLE_LINE(Rule.SHELF_MEETS_KEEP_OUT, ShelfFaults::inPeepholeLine),
  POST_IN_KEEP_OUT(Rule.SHELF_MEETS_KEEP_OUT, PostFaults::inKeepOut),
  POST_STOLEN(Rule.POSTS_OUT_OF_STOCK, PostFaults::stolen),
  POST_DROPPED(Rule.POST_NOT_IN_PLACE, PostFaults::dropped),
  POSTS_ALL_BUT_TWO_DROPPED(Rule.SHELF_UNSUPPORTED, PostFaults::allButTwoDropped),
  POST_OF_WRONG_LENGTH(Rule.POST_LENGTH_WRONG, PostFaults::ofWrongLength),
  POST_OF_TOO_MANY_PIECES(Rule.POST_WRONG, PostFaults::ofTooManyPieces),
  POST_OF_TWO_SECTIONS(Rule.POST_WRONG, PostFaults::ofTwoSections),
  POST_OUT_OF_PLACE(Rule.POST_NOT_IN_PLACE, PostFaults::outOfPlace),
  POST_NOT_OVER_POST(Rule.POST_NOT_ON_POST, PostFaults::notOverPost),
  POST_IN_POST(Rule.POSTS_COLLIDE, PostFaults::inPost);

  private final Rule rule;
  private final Planter planter;

  FaultKind(Rule rule, Planter planter) {
    this.rule = rule;
    this.planter = planter;
  }

  /** The rule that a load with this fault breaks, perhaps besides others. */
  public Rule rule() {
    return rule;
  }

  Planter planter() {
    return planter;
  }
}
