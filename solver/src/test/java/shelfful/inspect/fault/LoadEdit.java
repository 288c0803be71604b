package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Loads with one thing changed. */
final class LoadEdit {
  private LoadEdit() {}

  static Load layers(Load load, List<Layer> layers) {
    return new Load(load.request(), load.columnPlanId(), layers, load.posts(), load.leftOut());
  }

  static Load posts(Load load, List<StandingPost> posts) {
    return new Load(load.request(), load.columnPlanId(), load.layers(), posts, load.leftOut());
  }

  static Load leftOut(Load load, List<LeftOut> leftOut) {
    return new Load(load.request(), load.columnPlanId(), load.layers(), load.posts(), leftOut);
  }

  static Load request(Load load, LoadRequest request) {
    return new Load(request, load.columnPlanId(), load.layers(), load.posts(), load.leftOut());
  }

  static Load studio(Load load, UnaryOperator<Studio> change) {
    LoadRequest asked = load.request();
    return request(
        load,
        new LoadRequest(
            change.apply(asked.studio()),
            asked.batches(),
            asked.firing(),
            asked.columnPlanId(),
            asked.day(),
            asked.seed(),
            asked.steps(),
            asked.kept()));
  }

  static Load batches(Load load, UnaryOperator<Batch> change) {
    LoadRequest asked = load.request();
    return request(
        load,
        new LoadRequest(
            asked.studio(),
            asked.batches().stream().map(change).toList(),
            asked.firing(),
            asked.columnPlanId(),
            asked.day(),
            asked.seed(),
            asked.steps(),
            asked.kept()));
  }

  /** With every layer changed that is this very one. */
  static Load layer(Load load, Layer layer, UnaryOperator<Layer> change) {
    return layers(
        load,
        load.layers().stream().map(known -> known == layer ? change.apply(known) : known).toList());
  }

  static Layer at(Layer layer, Length z) {
    return new Layer(
        layer.id(),
        layer.columnId(),
        layer.level(),
        layer.place(),
        layer.shelfId(),
        z,
        layer.placements());
  }

  /** With one placement changed. */
  static Load placement(Load load, PlacedPiece piece, UnaryOperator<Placement> change) {
    return layer(
        load,
        piece.layer(),
        layer ->
            layer.holding(
                layer.placements().stream()
                    .map(known -> known == piece.placement() ? change.apply(known) : known)
                    .toList()));
  }

  /** With one piece moved; micrometres, rounded. */
  static Load moved(Load load, PlacedPiece piece, double x, double y) {
    Point at = point(x, y);
    return placement(
        load, piece, old -> new Placement(old.pieceId(), at, old.turn(), old.onCatcher()));
  }

  static Point point(double x, double y) {
    return new Point(new Length(Math.round(x)), new Length(Math.round(y)));
  }

  static Load post(Load load, StandingPost post, UnaryOperator<StandingPost> change) {
    return posts(
        load,
        load.posts().stream().map(known -> known == post ? change.apply(known) : known).toList());
  }

  /** Without a piece, which waits instead. */
  static Load waiting(Load load, List<String> pieceIds) {
    List<LeftOut> leftOut = new ArrayList<>(load.leftOut());
    pieceIds.forEach(id -> leftOut.add(waits(id)));
    List<Layer> layers =
        load.layers().stream()
            .map(
                layer ->
                    layer.holding(
                        layer.placements().stream()
                            .filter(placement -> !pieceIds.contains(placement.pieceId()))
                            .toList()))
            .toList();
    return leftOut(layers(load, layers), leftOut);
  }

  static LeftOut waits(String pieceId) {
    return new LeftOut(pieceId, LeftOut.Reason.NO_ROOM, "There was no room.", "Fire it next.");
  }
}
