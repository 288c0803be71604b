package shelfful.inspect.fault;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import shelfful.load.KeptSetting;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;

/** What was asked to stay, moved by the least there is. */
final class KeptFaults {
  private KeptFaults() {}

  static Optional<Load> pinnedMoved(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(piece -> LoadEdit.moved(pinning(load, piece), piece, piece.x() + 1, piece.y()));
  }

  static Optional<Load> pinnedTurned(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece ->
                LoadEdit.placement(
                    pinning(load, piece),
                    piece,
                    old ->
                        new Placement(
                            old.pieceId(),
                            old.at(),
                            new Angle(old.turn().millidegrees() + 1),
                            old.onCatcher())));
  }

  private static Load pinning(Load load, PlacedPiece piece) {
    KeptSetting kept = KeptSetting.of(load, Set.of(piece.piece().id()), Set.of());
    return LoadEdit.request(load, load.request().keeping(kept));
  }

  static Optional<Load> lockedMoved(Load load, Random random) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece ->
                LoadEdit.moved(locking(load, piece.layer().id()), piece, piece.x(), piece.y() - 1));
  }

  private static Load locking(Load load, String layerId) {
    KeptSetting kept = KeptSetting.of(load, Set.of(), Set.of(layerId));
    return LoadEdit.request(load, load.request().keeping(kept));
  }

  static Optional<Load> lockedPostExchanged(Load load, Random random) {
    StandingPost post = load.posts().get(random.nextInt(load.posts().size()));
    return post.carries().stream()
        .findFirst()
        .map(
            layer ->
                LoadEdit.post(
                    locking(load, layer),
                    post,
                    old ->
                        new StandingPost(old.at(), old.base(), List.of("another"), old.carries())));
  }
}
