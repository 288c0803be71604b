package shelfful.remedy;

import java.util.List;
import java.util.Optional;
import shelfful.load.LeftOut.Reason;
import shelfful.measure.Length;
import shelfful.studio.Clearances;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;
import shelfful.ware.Glaze;

/** A distance of the house rules that may be kept less strictly, and what is risked by it. */
enum Relaxation {
  GLAZED_TO_GLAZED("between glazed ware", "pieces may stick together"),
  HEADROOM("over the tallest piece", "a rim that rises or a warped shelf may touch"),
  UNDER_LID("under the lid", "ware may touch the lid"),
  WARE_TO_WALL("to the wall", "ware nearest the elements may be over-fired"),
  FOOT_TO_EDGE("from foot to shelf edge", "a foot may slip off the shelf when it is bumped");

  /** No more than this share of a distance is given up, however much is to be won. Ours. */
  private static final double MOST_SHARE = 0.5;

  private final String words;
  private final String risk;

  Relaxation(String words, String risk) {
    this.words = words;
    this.risk = risk;
  }

  String words() {
    return words;
  }

  String risk() {
    return risk;
  }

  /** Those that can have to do with a reason for waiting. */
  static List<Relaxation> against(Reason reason) {
    return switch (reason) {
      case TOO_TALL, NO_ZONE -> List.of(HEADROOM, UNDER_LID);
      case TOO_WIDE -> List.of(WARE_TO_WALL, FOOT_TO_EDGE);
      case NO_ROOM, SET_WAITS, TAKEN_OUT -> List.of(GLAZED_TO_GLAZED, HEADROOM);
      default -> List.of();
    };
  }

  /** The distance as it is kept. */
  Length kept(Clearances kept) {
    return switch (this) {
      case GLAZED_TO_GLAZED -> kept.glazedToGlazed();
      case HEADROOM -> kept.headroom();
      case UNDER_LID -> kept.underLid();
      case WARE_TO_WALL -> kept.wareToWall();
      case FOOT_TO_EDGE -> kept.footToShelfEdge();
    };
  }

  /** The most that is given up. */
  Length most(Clearances kept) {
    return new Length((long) (kept(kept).micrometres() * MOST_SHARE));
  }

  /** A studio that keeps so much less of it. */
  Studio by(Studio studio, Length less) {
    Studio relaxed = StudioChange.clearances(studio, by(studio.rules().clearances(), less));
    return this == GLAZED_TO_GLAZED
        ? StudioChange.glazes(
            relaxed, studio.glazes().stream().map(glaze -> nearer(glaze, less)).toList())
        : relaxed;
  }

  private Clearances by(Clearances kept, Length less) {
    return new Clearances(
        this == GLAZED_TO_GLAZED ? kept.glazedToGlazed().minus(less) : kept.glazedToGlazed(),
        kept.bisqueToBisque(),
        kept.wareToPost(),
        this == WARE_TO_WALL ? kept.wareToWall().minus(less) : kept.wareToWall(),
        kept.wareToKeepOut(),
        this == FOOT_TO_EDGE ? kept.footToShelfEdge().minus(less) : kept.footToShelfEdge(),
        this == HEADROOM ? kept.headroom().minus(less) : kept.headroom(),
        this == UNDER_LID ? kept.underLid().minus(less) : kept.underLid(),
        kept.offFloor(),
        kept.leastShelfToShelf());
  }

  private static Glaze nearer(Glaze glaze, Length less) {
    return new Glaze(
        glaze.id(),
        glaze.name(),
        glaze.letter(),
        glaze.colour(),
        glaze.cone(),
        glaze.atmosphere(),
        glaze.gap().flatMap(gap -> shorter(gap, less)),
        glaze.runny(),
        glaze.bareFoot(),
        glaze.likes(),
        glaze.forbidden());
  }

  private static Optional<Length> shorter(Length gap, Length less) {
    return gap.isLongerThan(less) ? Optional.of(gap.minus(less)) : Optional.empty();
  }
}
