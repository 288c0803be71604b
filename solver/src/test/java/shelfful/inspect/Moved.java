package shelfful.inspect;

import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.ShelfPlace;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.load.PostUnder;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Form;

/**
 * A movement of the whole plan that leaves every distance as it was.
 *
 * @param point where a point comes to lie
 * @param piece how a piece's turn changes
 * @param shelf how the turn of a place changes, by the kind of shelf
 * @param form how forms change
 */
record Moved(
    UnaryOperator<Point> point,
    UnaryOperator<Angle> piece,
    java.util.function.BiFunction<String, Angle, Angle> shelf,
    UnaryOperator<Form> form) {

  Load of(Load load) {
    List<StandingPost> posts =
        load.posts().stream()
            .map(
                post ->
                    new StandingPost(
                        point.apply(post.at()), post.base(), post.postIds(), post.carries()))
            .toList();
    return new Load(
        request(load.request()),
        load.columnPlanId(),
        load.layers().stream().map(this::layer).toList(),
        posts,
        load.leftOut());
  }

  private Layer layer(Layer layer) {
    return layer.holding(layer.placements().stream().map(this::placement).toList());
  }

  private LoadRequest request(LoadRequest old) {
    Studio studio = old.studio();
    Studio moved =
        new Studio(
            studio.name(),
            studio.unit(),
            studio.forms().stream().map(form).toList(),
            studio.glazes(),
            studio.kilns().stream().map(this::kiln).toList(),
            studio.shelves(),
            studio.posts(),
            studio.rules());
    return new LoadRequest(
        moved,
        old.batches(),
        old.firing(),
        old.columnPlanId(),
        old.day(),
        old.seed(),
        old.steps(),
        old.kept().map(this::kept));
  }

  private KeptSetting kept(KeptSetting old) {
    return new KeptSetting(
        old.columnPlanId(),
        old.pieces().stream()
            .map(
                pin ->
                    new PinnedPiece(
                        pin.pieceId(), pin.layer(), point.apply(pin.at()), piece.apply(pin.turn())))
            .toList(),
        old.layers().stream().map(this::locked).toList());
  }

  private LockedLayer locked(LockedLayer old) {
    return new LockedLayer(
        old.layer(),
        old.shelfId(),
        old.z(),
        old.placements().stream().map(this::placement).toList(),
        old.posts().stream()
            .map(post -> new PostUnder(point.apply(post.at()), post.base(), post.postIds()))
            .toList());
  }

  private Placement placement(Placement old) {
    return old.movedTo(point.apply(old.at()), piece.apply(old.turn()));
  }

  private Kiln kiln(Kiln old) {
    return new Kiln(
        old.id(),
        old.name(),
        old.loading(),
        old.chamber(),
        old.hottest(),
        old.keepOuts().stream().map(this::keepOut).toList(),
        old.columnPlans().stream()
            .map(
                plan ->
                    new ColumnPlan(
                        plan.id(), plan.name(), plan.columns().stream().map(this::column).toList()))
            .toList());
  }

  private KeepOut keepOut(KeepOut old) {
    return new KeepOut(
        old.name(),
        old.kind(),
        point.apply(old.from()),
        point.apply(old.to()),
        old.across(),
        old.bottom(),
        old.top());
  }

  private Column column(Column old) {
    List<ShelfPlace> places =
        old.places().stream()
            .map(
                place ->
                    new ShelfPlace(
                        place.shelfIds(),
                        point.apply(place.at()),
                        shelf.apply(place.shelfIds().get(0), place.turn())))
            .toList();
    return new Column(old.id(), places, old.posts().stream().map(point).toList(), old.standsOn());
  }
}
