package shelfful.inspect.fault;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import shelfful.fixture.BisqueWays;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;
import shelfful.ware.Hollow;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.PileWay;
import shelfful.ware.Piling;

/** Pieces that rest on or in each other, spoilt by the least there is. */
final class PileFaults {
  private PileFaults() {}

  /** A pile of several pieces of a load. */
  private record Piled(Layer layer, Pile pile) {
    Placement top() {
      return pile.pieces().get(pile.size() - 1);
    }

    boolean isTopped(PileWay way) {
      return top().rest().way().equals(Optional.of(way));
    }
  }

  private static Optional<Piled> pick(Load load, Random random, Predicate<Piled> wanted) {
    List<Piled> piles =
        load.layers().stream()
            .flatMap(layer -> Pile.of(layer.placements()).stream().map(p -> new Piled(layer, p)))
            .filter(piled -> piled.pile().size() > 1 && wanted.test(piled))
            .collect(Collectors.toList());
    Collections.shuffle(piles, random);
    return piles.stream().findFirst();
  }

  static Optional<Load> tooHigh(Load load, Random random) {
    return pick(load, random, p -> p.isTopped(PileWay.NESTED) && p.pile().size() > 2)
        .map(
            piled ->
                set(
                    load,
                    piled.top(),
                    old ->
                        new BisqueSetting(
                            old.piled()
                                .map(p -> new Piling(piled.pile().size() - 1, p.increment())),
                            old.rimToRim(),
                            old.footToFoot(),
                            old.hollow(),
                            old.carries())));
  }

  static Optional<Load> tooHeavy(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(
            piled -> {
              long grams = 0;
              for (Placement one : piled.pile().pieces().subList(1, piled.pile().size())) {
                grams += form(load, one).mass().grams();
              }
              Mass less = new Mass(grams - 1);
              return set(
                  load,
                  piled.pile().lowest(),
                  old ->
                      new BisqueSetting(
                          old.piled(),
                          old.rimToRim(),
                          old.footToFoot(),
                          old.hollow(),
                          Optional.of(less)));
            });
  }

  static Optional<Load> wrongFormInside(Load load, Random random) {
    return pick(load, random, p -> p.isTopped(PileWay.INSIDE))
        .map(
            piled ->
                set(
                    load,
                    piled.pile().lowest(),
                    old ->
                        hollow(
                            old,
                            hollow -> new Hollow(hollow.clear(), hollow.deep(), List.of("mug")))));
  }

  static Optional<Load> hollowTooNarrow(Load load, Random random) {
    return pick(load, random, p -> p.isTopped(PileWay.INSIDE))
        .map(
            piled -> {
              Form small = form(load, piled.top());
              Form large = form(load, piled.pile().lowest());
              long needs =
                  small.profile().bands().stream()
                      .mapToLong(band -> band.outline().width().micrometres())
                      .max()
                      .orElseThrow();
              long tolerances = small.tolerance().micrometres() + large.tolerance().micrometres();
              Outline less = new Outline.Round(new Length(needs + 2 * tolerances - 1));
              return set(
                  load,
                  piled.pile().lowest(),
                  old -> hollow(old, h -> new Hollow(less, h.deep(), h.formIds())));
            });
  }

  private static BisqueSetting hollow(BisqueSetting old, UnaryOperator<Hollow> change) {
    return new BisqueSetting(
        old.piled(), old.rimToRim(), old.footToFoot(), old.hollow().map(change), old.carries());
  }

  /** Nothing of the sort is allowed any more. */
  static Optional<Load> notAllowed(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(piled -> set(load, piled.pile().lowest(), old -> BisqueSetting.ALONE));
  }

  static Optional<Load> wrongWayUp(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(
            piled ->
                top(load, piled, old -> rest(old, old.rest().lift(), !old.rest().upsideDown())));
  }

  static Optional<Load> floating(Load load, Random random) {
    return lifted(load, random, 2);
  }

  static Optional<Load> sunk(Load load, Random random) {
    return lifted(load, random, -2);
  }

  private static Optional<Load> lifted(Load load, Random random, long micrometres) {
    Length by = new Length(micrometres);
    return pick(load, random, p -> true)
        .map(
            piled ->
                top(
                    load,
                    piled,
                    old -> rest(old, old.rest().lift().plus(by), old.rest().upsideDown())));
  }

  private static Placement rest(Placement old, Length lift, boolean upsideDown) {
    Rest rest = new Rest(old.rest().on(), old.rest().way(), lift, upsideDown);
    return new Placement(old.pieceId(), old.at(), old.turn(), old.onCatcher(), rest);
  }

  static Optional<Load> offCentre(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(
            piled ->
                top(
                    load,
                    piled,
                    old ->
                        old.movedTo(
                            new Point(old.at().x().plus(new Length(1)), old.at().y()),
                            old.turn())));
  }

  static Optional<Load> turnedOtherwise(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(
            piled ->
                top(
                    load,
                    piled,
                    old -> old.movedTo(old.at(), new Angle(old.turn().millidegrees() + 1))));
  }

  static Optional<Load> carriedByNobody(Load load, Random random) {
    return pick(load, random, p -> true)
        .map(
            piled ->
                top(
                    load,
                    piled,
                    old -> {
                      Rest was = old.rest();
                      Rest rest =
                          new Rest(Optional.of("nobody"), was.way(), was.lift(), was.upsideDown());
                      return new Placement(
                          old.pieceId(), old.at(), old.turn(), old.onCatcher(), rest);
                    }));
  }

  /** Two piles whose widest bands share a height, nearer than their tolerances. */
  static Optional<Load> pilesTooClose(Load load, Random random) {
    Optional<Piled> one = pick(load, random, p -> p.isTopped(PileWay.NESTED));
    Optional<Piled> other = pick(load, random, p -> p.isTopped(PileWay.RIM_TO_RIM));
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    Form form = form(load, one.get().pile().lowest());
    long across = form.profile().bands().get(1).outline().width().micrometres();
    long apart = across + 2 * form.tolerance().micrometres() - 50;
    Point from = other.get().pile().lowest().at();
    Point to = new Point(from.x().plus(new Length(apart)), from.y());
    Load moved = load;
    for (Placement piece : one.get().pile().pieces()) {
      moved = change(moved, piece.pieceId(), old -> old.movedTo(to, old.turn()));
    }
    return Optional.of(moved);
  }

  /** The headroom is made larger than what is over the highest pile. */
  static Optional<Load> headroomShort(Load load, Random random) {
    return pick(load, random, p -> p.isTopped(PileWay.RIM_TO_RIM))
        .map(
            piled -> {
              Form form = form(load, piled.top());
              long top =
                  piled.layer().z().micrometres()
                      + piled.top().rest().lift().micrometres()
                      + form.profile().height().micrometres();
              long above =
                  load.layers().stream()
                      .filter(layer -> layer.z().isLongerThan(piled.layer().z()))
                      .mapToLong(layer -> underside(load, layer))
                      .min()
                      .orElseThrow();
              long tolerances = 2 * form.tolerance().micrometres();
              return StudioEdit.heights(load, new Length(above - top - tolerances + 1), null, null);
            });
  }

  private static long underside(Load load, Layer layer) {
    Length thick = load.request().studio().shelf(layer.shelfId()).orElseThrow().thickness();
    return layer.z().minus(thick).micrometres();
  }

  private static Load top(Load load, Piled piled, UnaryOperator<Placement> change) {
    return change(load, piled.top().pieceId(), change);
  }

  private static Load change(Load load, String pieceId, UnaryOperator<Placement> change) {
    List<Layer> layers =
        load.layers().stream()
            .map(
                layer ->
                    layer.holding(
                        layer.placements().stream()
                            .map(one -> one.pieceId().equals(pieceId) ? change.apply(one) : one)
                            .toList()))
            .toList();
    return LoadEdit.layers(load, layers);
  }

  private static Form form(Load load, Placement placement) {
    Map<String, Piece> list =
        load.request().pieces().stream().collect(Collectors.toMap(Piece::id, Function.identity()));
    String id = list.get(placement.pieceId()).batch().formId();
    return load.request().studio().form(id).orElseThrow();
  }

  private static Load set(Load load, Placement of, UnaryOperator<BisqueSetting> change) {
    Form form = form(load, of);
    Form changed = BisqueWays.with(form, change.apply(form.bisque()));
    return LoadEdit.studio(load, studio -> BisqueWays.with(studio, changed));
  }
}
