package shelfful.ui.desk;

import java.util.Optional;
import shelfful.drawing.LayerList;
import shelfful.drawing.Spot;
import shelfful.ui.shelfview.Overlay;
import shelfful.ui.shelfview.ShelfView;

/** Pieces that are taken up, carried and put back on a picture that nobody sees. */
final class UnseenHand {
  /** The side of the picture, in pixels. */
  private static final double SIDE = 400;

  private final ShownLoad load;
  private final LayerList layer;
  private final ShelfView view = new ShelfView();

  /** A hand over the first layer of a load. */
  UnseenHand(ShownLoad load) {
    this.load = load;
    this.layer = load.lists().layers().get(0);
    view.resize(SIDE, SIDE);
    putBack();
    view.layout();
  }

  /** Carries another piece than the step before, or puts it back at every other step. */
  void step(int number) {
    if (number % 2 == 0) {
      carry(layer.rows().get(number % layer.rows().size()).pieceId(), number % 4 == 0);
    } else {
      putBack();
    }
  }

  private void putBack() {
    view.show(load.sheets(layer.layerId()), "");
    view.layOver(Overlay.NONE);
  }

  private void carry(String pieceId, boolean forbidden) {
    view.pointOut(load.ring(layer.layerId(), pieceId));
    view.show(load.without(layer.layerId(), pieceId), "");
    load.plan()
        .placement(pieceId)
        .ifPresent(
            place ->
                view.layOver(
                    new Overlay(
                        load.picture().held(layer.layerId(), place, 1, forbidden),
                        Optional.of(
                            new Overlay.Measure(
                                new Spot(0, 0), new Spot(SIDE, SIDE), "–", forbidden)))));
  }

  /** Paints the picture, and throws it away. */
  void paint() {
    view.snapshot(null, null);
  }
}
