package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.drawing.LayerList;
import shelfful.ui.hand.HandViewModel;

/** Which layer and which piece of the load on the screen are chosen. */
final class Chosen {
  private final Supplier<Optional<ShownLoad>> shown;
  private final HandViewModel hand;
  private final ReadOnlyStringWrapper layerId = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper pieceId = new ReadOnlyStringWrapper("");

  /**
   * Nothing is chosen yet.
   *
   * @param hand goes along to another layer, or is emptied for another piece
   */
  Chosen(Supplier<Optional<ShownLoad>> shown, HandViewModel hand) {
    this.shown = shown;
    this.hand = hand;
  }

  ReadOnlyStringProperty layerId() {
    return layerId.getReadOnlyProperty();
  }

  ReadOnlyStringProperty pieceId() {
    return pieceId.getReadOnlyProperty();
  }

  /** Chooses a layer; one that the load does not have is passed over. */
  void layer(String id) {
    if (!id.equals(layerId.get()) && shown.get().flatMap(load -> load.layer(id)).isPresent()) {
      hand.toLayer(id);
      if (hand.held().get().isEmpty()) {
        pieceId.set("");
      }
      layerId.set(id);
    }
  }

  /** Chooses the layer that is loaded so many layers later; stops at the first and the last. */
  void layerAfter(int steps) {
    List<String> ids =
        shown.get().stream()
            .flatMap(load -> load.lists().layers().stream())
            .map(LayerList::layerId)
            .toList();
    int wanted = ids.indexOf(layerId.get()) + steps;
    if (wanted >= 0 && wanted < ids.size()) {
      layer(ids.get(wanted));
    }
  }

  /** Chooses a piece, or none with empty text; one on another layer brings that layer with it. */
  void piece(String id) {
    if (hand.held().get().filter(held -> !held.pieceId().equals(id)).isPresent()) {
      hand.setDown();
    }
    shown
        .get()
        .flatMap(load -> load.layerOf(id))
        .filter(layer -> !layer.equals(layerId.get()))
        .ifPresent(this::layer);
    pieceId.set(id);
  }

  /** Before another load is shown: the layer stays chosen where it has it, else the piece's. */
  void beforeShowing(ShownLoad load) {
    layerId.set(
        load.layerOf(pieceId.get())
            .flatMap(load::layer)
            .or(() -> load.layer(layerId.get()))
            .or(() -> load.lists().layers().stream().findFirst())
            .map(LayerList::layerId)
            .orElse(""));
  }

  /** Once another load is shown: the piece stays chosen where it has it. */
  void onceShown(ShownLoad load) {
    boolean known =
        load.layerOf(pieceId.get()).isPresent() || load.plan().waiting(pieceId.get()).isPresent();
    pieceId.set(known ? pieceId.get() : "");
  }
}
