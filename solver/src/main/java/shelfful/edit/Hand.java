package shelfful.edit;

import java.util.Optional;
import shelfful.inspect.PlaceJudge;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * A piece taken up by hand: tells what the judge would say of it anywhere, brings it to rest
 * against its neighbours, and finds a free place. Made once for each time a piece is taken up;
 * cheap to ask at every move of a pointer.
 */
public final class Hand {
  private final PlaceJudge judge;
  private final WorkPlan plan;
  private final String pieceId;
  private final boolean onCatcher;

  private Hand(PlaceJudge judge, WorkPlan plan, String pieceId) {
    this.judge = judge;
    this.plan = plan;
    this.pieceId = pieceId;
    this.onCatcher = judge.needsCatcher();
  }

  /** Takes up a piece that stands or waits; empty when the list has no such piece. */
  public static Optional<Hand> of(WorkPlan plan, String pieceId) {
    return PlaceJudge.of(plan.load(), pieceId).map(judge -> new Hand(judge, plan, pieceId));
  }

  public String pieceId() {
    return pieceId;
  }

  /** Whether turning the piece makes a difference. */
  public boolean mayTurn() {
    return judge.mayTurn();
  }

  /** Held over a place. */
  public Tentative at(String layerId, Point at, Angle turn) {
    return over(layerId, new Placement(pieceId, at, turn, onCatcher));
  }

  Tentative over(String layerId, Placement place) {
    return new Tentative(layerId, place, judge.figures(layerId, place));
  }

  /**
   * Held over a place, and drawn to rest against one thing or between two where that is within
   * reach: exactly at the distance to keep, rounded up to whole micrometres.
   *
   * @param within how far the piece may be drawn
   */
  public Tentative snapped(String layerId, Point at, Angle turn, Length within) {
    return new Snap(this, at(layerId, at, turn), within).drawn();
  }

  /** The free place of a layer that is nearest to a point, in one of a few directions. */
  public Optional<Tentative> free(String layerId, Point near, Angle turn) {
    return plan.load()
        .layer(layerId)
        .flatMap(layer -> free(layer, near, turn))
        .map(place -> over(layerId, place));
  }

  private Optional<Placement> free(Layer layer, Point near, Angle turn) {
    return new FreePlace(plan.load(), layer)
        .around(near, turn, judge.mayTurn())
        .map(pose -> new Placement(pieceId, pose.at(), pose.turn(), onCatcher))
        .filter(place -> judge.mayStand(layer.id(), place))
        .findFirst();
  }
}
