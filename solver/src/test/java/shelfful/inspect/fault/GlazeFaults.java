package shelfful.inspect.fault;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Zone;

/** What glazes ask for and do not get. */
final class GlazeFaults {
  private GlazeFaults() {}

  /** A catcher taken away or, where there is none, a glaze that starts to run. */
  static Optional<Load> catcherMissing(Load load, Random random) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    Optional<PlacedPiece> onCatcher =
        pieces.stream().filter(piece -> piece.placement().onCatcher()).findFirst();
    if (onCatcher.isPresent()) {
      return onCatcher.map(piece -> catcher(load, piece, false));
    }
    return pieces.stream()
        .flatMap(piece -> piece.piece().batch().glazeId().stream())
        .findFirst()
        .map(id -> StudioEdit.glaze(load, id, StudioEdit::runny));
  }

  static Optional<Load> catcherNeedless(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .filter(piece -> !piece.placement().onCatcher())
        .findFirst()
        .map(piece -> catcher(load, piece, true));
  }

  private static Load catcher(Load load, PlacedPiece piece, boolean stands) {
    return LoadEdit.placement(
        load, piece, old -> new Placement(old.pieceId(), old.at(), old.turn(), stands));
  }

  /** A glaze forbids the zone that one of its pieces is in. */
  static Optional<Load> zoneForbidden(Load load, Random random) {
    if (!(new Inspector().inspect(load) instanceof Inspection.Passed passed)) {
      return Optional.empty();
    }
    return PlacedPiece.of(load, random).stream()
        .filter(piece -> piece.piece().batch().glazeId().isPresent())
        .findFirst()
        .map(
            piece -> {
              Zone zone = passed.load().figures(piece.layer().id()).zone();
              String id = piece.piece().batch().glazeId().orElseThrow();
              return StudioEdit.glaze(load, id, glaze -> StudioEdit.forbidding(glaze, zone));
            });
  }

  static Optional<Load> keptApartInFiring(Load load, Random random) {
    return twoGlazes(load, random, false)
        .map(two -> keptApart(load, two, Apartness.NOT_IN_ONE_FIRING, Optional.empty()));
  }

  static Optional<Load> keptApartOnLayer(Load load, Random random) {
    return twoGlazes(load, random, true)
        .map(two -> keptApart(load, two, Apartness.NOT_ON_ONE_LAYER, Optional.empty()));
  }

  /** As far apart as their axes are, which their outlines never are. */
  static Optional<Load> keptApartTooClose(Load load, Random random) {
    return twoGlazes(load, random, true)
        .map(
            two -> {
              double apart =
                  Math.hypot(two.get(0).x() - two.get(1).x(), two.get(0).y() - two.get(1).y());
              Length distance = new Length(Math.round(apart));
              return keptApart(load, two, Apartness.BY_DISTANCE, Optional.of(distance));
            });
  }

  private static Load keptApart(
      Load load, List<PlacedPiece> two, Apartness apartness, Optional<Length> distance) {
    return StudioEdit.keptApart(
        load,
        new KeptApart(
            two.get(0).piece().batch().glazeId().orElseThrow(),
            two.get(1).piece().batch().glazeId().orElseThrow(),
            apartness,
            distance));
  }

  private static Optional<List<PlacedPiece>> twoGlazes(
      Load load, Random random, boolean onOneLayer) {
    List<PlacedPiece> pieces = PlacedPiece.of(load, random);
    for (PlacedPiece one : pieces) {
      for (PlacedPiece other : pieces) {
        Optional<Glaze> first = one.glaze(load);
        Optional<Glaze> second = other.glaze(load);
        if (first.isPresent()
            && second.isPresent()
            && !first.get().id().equals(second.get().id())
            && (!onOneLayer || one.layer() == other.layer())) {
          return Optional.of(List.of(one, other));
        }
      }
    }
    return Optional.empty();
  }
}
