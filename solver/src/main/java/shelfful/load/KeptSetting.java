package shelfful.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;

/**
 * What must stay when a firing is planned again: nothing here is moved, everything else is planned
 * around it. Whether it can stand at all is for planning to say.
 *
 * <p>A locked layer stands on what is under it, so it holds all layers below it in its column, and
 * all layers of the columns which that stands on, just as they are: they must be locked too.
 *
 * @param columnPlanId the column plan whose columns are meant
 * @param pieces that stay where they stand, by layer, then by id
 * @param layers that stay exactly as they are, by column, lowest first
 */
public record KeptSetting(String columnPlanId, List<PinnedPiece> pieces, List<LockedLayer> layers) {

  /** Takes its own copies, in order. */
  public KeptSetting {
    pieces =
        pieces.stream()
            .sorted(Comparator.comparing(PinnedPiece::layer).thenComparing(PinnedPiece::pieceId))
            .toList();
    layers = layers.stream().sorted(Comparator.comparing(LockedLayer::layer)).toList();
  }

  /**
   * What stays of a load: some of its pieces, and some of its layers together with all that they
   * stand on.
   *
   * @param pieceIds pieces to pin, each with all of the pile it is in; those that the load does not
   *     hold are left aside
   * @param layerIds layers to lock; those that the load does not have are left aside
   */
  public static KeptSetting of(Load load, Set<String> pieceIds, Set<String> layerIds) {
    Set<LayerPlace> locked = new HashSet<>();
    Optional<ColumnPlan> plan = plan(load);
    for (Layer layer : load.layers()) {
      if (layerIds.contains(layer.id())) {
        locked.add(LayerPlace.of(layer));
        plan.ifPresent(columns -> under(load, columns, layer).forEach(locked::add));
      }
    }
    List<PinnedPiece> pieces = new ArrayList<>();
    List<LockedLayer> layers = new ArrayList<>();
    for (Layer layer : load.layers()) {
      LayerPlace place = LayerPlace.of(layer);
      Pile.of(layer.placements()).stream()
          .filter(pile -> pile.pieces().stream().anyMatch(one -> pieceIds.contains(one.pieceId())))
          .flatMap(pile -> pile.pieces().stream())
          .map(one -> PinnedPiece.of(place, one))
          .forEach(pieces::add);
      if (locked.contains(place)) {
        layers.add(LockedLayer.of(load, layer));
      }
    }
    return new KeptSetting(load.columnPlanId(), pieces, layers);
  }

  private static Optional<ColumnPlan> plan(Load load) {
    return load.request().studio().kiln(load.request().firing().kilnId()).stream()
        .flatMap(kiln -> kiln.columnPlans().stream())
        .filter(plan -> plan.id().equals(load.columnPlanId()))
        .findFirst();
  }

  private static List<LayerPlace> under(Load load, ColumnPlan plan, Layer top) {
    Set<String> columns = columnsUnder(plan, top.columnId());
    return load.layers().stream()
        .filter(
            layer ->
                columns.contains(layer.columnId())
                    || layer.columnId().equals(top.columnId()) && layer.level() < top.level())
        .map(LayerPlace::of)
        .toList();
  }

  /** The columns that one stands on, and those that these stand on. */
  public static Set<String> columnsUnder(ColumnPlan plan, String columnId) {
    Set<String> found = new HashSet<>();
    for (Column column : plan.columns()) {
      if (column.id().equals(columnId)) {
        for (String lower : column.standsOn()) {
          found.add(lower);
          found.addAll(columnsUnder(plan, lower));
        }
      }
    }
    return found;
  }

  /** Every piece that stays, the pinned ones and those on locked layers. */
  public List<PinnedPiece> standing() {
    Set<PinnedPiece> all = new LinkedHashSet<>(pieces);
    for (LockedLayer layer : layers) {
      for (Placement one : layer.placements()) {
        all.add(PinnedPiece.of(layer.layer(), one));
      }
    }
    return List.copyOf(all);
  }

  /** Whether nothing has to stay. */
  public boolean isEmpty() {
    return pieces.isEmpty() && layers.isEmpty();
  }

  /** The locked layer of a place, if that is locked. */
  public Optional<LockedLayer> locked(LayerPlace place) {
    return layers.stream().filter(layer -> layer.layer().equals(place)).findFirst();
  }
}
