package shelfful.ui.desk;

import java.util.Comparator;
import java.util.Optional;
import shelfful.app.Opened;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.edit.Hand;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.measure.Point;

/**
 * Goes once through what the first plan and the first piece in the hand need, on the demo and away
 * from the screen. Java reads and compiles a program as it is used: without this the first piece
 * that is taken up would hold up the screen for longer than all later ones.
 */
final class Rehearsal {
  private static final int MOVES = 300;
  private static final Length REACH = Length.ofMillimetres(3);

  private Rehearsal() {}

  /** Takes a second or two; what it makes is thrown away. The load may be painted. */
  static Optional<ShownLoad> run() {
    Optional<InspectedLoad> load =
        Demo.request() instanceof Opened.Ready<LoadRequest> ready
            ? new PlanALoad(ready.value()).run(SearchLength.ofSteps(0), PlanListener.none())
            : Optional.empty();
    return load.map(Rehearsal::run);
  }

  private static ShownLoad run(InspectedLoad load) {
    WorkPlan plan = WorkPlan.of(load.load());
    ShownLoad shown = ShownLoad.of(plan, load, Sight.USUAL);
    load.load().layers().stream()
        .max(Comparator.comparing(layer -> layer.placements().size()))
        .filter(layer -> !layer.placements().isEmpty())
        .ifPresent(layer -> carry(shown, layer));
    return shown;
  }

  private static void carry(ShownLoad shown, Layer layer) {
    Placement piece = layer.placements().get(layer.placements().size() / 2);
    Optional<Hand> hand = Hand.of(shown.plan(), piece.pieceId());
    shown.without(layer.id(), piece.pieceId());
    for (int i = 0; i < MOVES && hand.isPresent(); i++) {
      Point to =
          new Point(
              piece.at().x().plus(Length.ofMillimetres(i % 20)),
              piece.at().y().plus(Length.ofMillimetres(i % 30)));
      hand.get().snapped(layer.id(), to, piece.turn(), REACH);
      shown.picture().held(layer.id(), piece, 1, i % 2 == 0);
    }
  }
}
