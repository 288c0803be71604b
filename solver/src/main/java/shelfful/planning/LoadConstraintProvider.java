package shelfful.planning;

import java.util.function.ToIntFunction;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintCollectors;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;

/**
 * What is best, in this order: nothing unsafe; every must-go piece in; worth; whole orders; zones
 * liked; least handling.
 */
public final class LoadConstraintProvider implements ConstraintProvider {
  static final int HARD_LEVELS = 1;
  static final int SOFT_LEVELS = 5;

  private static final int MUST_GO = 0;
  private static final int WORTH = 1;
  private static final int ORDERS = 2;
  private static final int ZONES = 3;
  private static final int HANDLING = 4;

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      // Unsafe.
      stackCannotBeBuilt(factory),
      layerHoldsTooMuch(factory),
      shelfOverloaded(factory),
      keptApart(factory),
      zoneForbidden(factory),
      setSplit(factory),
      // Better and worse.
      mustGoWaits(factory),
      pieceGoesIn(factory),
      orderSplit(factory),
      zoneNotLiked(factory),
      layersToHandle(factory),
    };
  }

  Constraint stackCannotBeBuilt(ConstraintFactory factory) {
    return unsafe(factory, "stackCannotBeBuilt", Evaluation::stackFails);
  }

  Constraint layerHoldsTooMuch(ConstraintFactory factory) {
    return unsafe(factory, "layerHoldsTooMuch", Evaluation::layersThatDoNotFit);
  }

  Constraint shelfOverloaded(ConstraintFactory factory) {
    return unsafe(factory, "shelfOverloaded", Evaluation::overloaded);
  }

  Constraint keptApart(ConstraintFactory factory) {
    return unsafe(factory, "keptApart", Evaluation::keptApart);
  }

  Constraint zoneForbidden(ConstraintFactory factory) {
    return unsafe(factory, "zoneForbidden", Evaluation::zonesForbidden);
  }

  Constraint setSplit(ConstraintFactory factory) {
    return unsafe(factory, "setSplit", Evaluation::setsSplit);
  }

  Constraint mustGoWaits(ConstraintFactory factory) {
    return factory
        .forEachIncludingNullVars(PieceChoice.class)
        .filter(piece -> !piece.isIn() && piece.lot().mustGo())
        .penalizeLong(soft(MUST_GO), piece -> 1)
        .asConstraint("mustGoWaits");
  }

  Constraint pieceGoesIn(ConstraintFactory factory) {
    return factory
        .forEach(PieceChoice.class)
        .rewardLong(soft(WORTH), piece -> piece.lot().worth())
        .asConstraint("pieceGoesIn");
  }

  Constraint orderSplit(ConstraintFactory factory) {
    return factory
        .forEachIncludingNullVars(PieceChoice.class)
        .filter(piece -> piece.lot().order() >= 0)
        .groupBy(
            piece -> piece.lot().order(),
            ConstraintCollectors.count(),
            ConstraintCollectors.sum(piece -> piece.isIn() ? 1 : 0))
        .filter((order, all, in) -> in > 0 && in < all)
        .penalizeLong(soft(ORDERS), (order, all, in) -> 1)
        .asConstraint("orderSplit");
  }

  Constraint zoneNotLiked(ConstraintFactory factory) {
    return judged(factory, "zoneNotLiked", soft(ZONES), Evaluation::zonesNotLiked);
  }

  Constraint layersToHandle(ConstraintFactory factory) {
    return factory
        .forEach(PieceChoice.class)
        .groupBy(piece -> piece.getSlot().shelf())
        .penalizeLong(soft(HANDLING), slot -> 1)
        .asConstraint("layersToHandle");
  }

  private static Constraint unsafe(
      ConstraintFactory factory, String name, ToIntFunction<Evaluation> broken) {
    return judged(factory, name, BendableLongScore.ofHard(HARD_LEVELS, SOFT_LEVELS, 0, 1), broken);
  }

  private static Constraint judged(
      ConstraintFactory factory,
      String name,
      BendableLongScore weight,
      ToIntFunction<Evaluation> broken) {
    return factory
        .forEach(PieceChoice.class)
        .groupBy(new SlotCounts.Collector())
        .join(Rulebook.class)
        .penalizeLong(weight, (counts, rules) -> broken.applyAsInt(rules.judge(counts)))
        .asConstraint(name);
  }

  private static BendableLongScore soft(int level) {
    return BendableLongScore.ofSoft(HARD_LEVELS, SOFT_LEVELS, level, 1);
  }
}
