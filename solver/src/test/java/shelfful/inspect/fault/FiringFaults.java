package shelfful.inspect.fault;

import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import shelfful.load.Firing;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Stage;

/** Ware, kiln or shelves in the wrong firing. */
final class FiringFaults {
  private FiringFaults() {}

  static Optional<Load> stageWrong(Load load, Random random) {
    Stage[] stages = Stage.values();
    Stage goesIn = firing(load).kind().goesIn();
    Stage other =
        stages[(goesIn.ordinal() + 1 + random.nextInt(stages.length - 1)) % stages.length];
    return anyBatch(load, random, batch -> BatchEdit.at(batch, other));
  }

  static Optional<Load> coneWrong(Load load, Random random) {
    Firing firing = firing(load);
    return Cone.NUMBERS.stream()
        .map(Cone::new)
        .filter(cone -> cone.stepsFrom(firing.cone()) == firing.coneTolerance() + 1)
        .findFirst()
        .flatMap(cone -> anyBatch(load, random, batch -> BatchEdit.forCone(batch, cone)));
  }

  static Optional<Load> glazedInBisque(Load load, Random random) {
    if (firing(load).kind() != FiringKind.BISQUE) {
      return Optional.empty();
    }
    return load.request().studio().glazes().stream()
        .findFirst()
        .flatMap(glaze -> anyBatch(load, random, batch -> BatchEdit.glazed(batch, glaze.id())));
  }

  private static Optional<Load> anyBatch(Load load, Random random, UnaryOperator<Batch> change) {
    return PlacedPiece.of(load, random).stream()
        .findFirst()
        .map(
            piece -> {
              Batch wrong = piece.piece().batch();
              return LoadEdit.batches(
                  load, batch -> batch.equals(wrong) ? change.apply(batch) : batch);
            });
  }

  static Optional<Load> atmosphereWrong(Load load, Random random) {
    Atmosphere other =
        firing(load).atmosphere() == Atmosphere.OXIDATION
            ? Atmosphere.REDUCTION
            : Atmosphere.OXIDATION;
    return PlacedPiece.of(load, random).stream()
        .flatMap(piece -> piece.piece().batch().glazeId().stream())
        .findFirst()
        .map(id -> StudioEdit.glaze(load, id, glaze -> StudioEdit.needing(glaze, other)));
  }

  static Optional<Load> kilnTooHot(Load load, Random random) {
    return cooler(load).map(cone -> StudioEdit.kiln(load, kiln -> StudioEdit.hottest(kiln, cone)));
  }

  static Optional<Load> shelfTooHot(Load load, Random random) {
    Layer layer = load.layers().get(random.nextInt(load.layers().size()));
    return cooler(load)
        .map(
            cone ->
                StudioEdit.shelf(load, layer.shelfId(), shelf -> StudioEdit.hottest(shelf, cone)));
  }

  private static Optional<Cone> cooler(Load load) {
    int order = Cone.NUMBERS.indexOf(firing(load).cone().number());
    return order == 0 ? Optional.empty() : Cone.find(Cone.NUMBERS.get(order - 1));
  }

  private static Firing firing(Load load) {
    return load.request().firing();
  }
}
