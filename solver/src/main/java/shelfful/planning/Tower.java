package shelfful.planning;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.PileWay;
import shelfful.ware.StandingWare;

/**
 * A way of setting pieces of some lots on or in each other: a pile before it is known which single
 * pieces it is of.
 *
 * @param storeys the lowest first; each rests on or in the one before
 */
record Tower(List<Storey> storeys) {
  Tower {
    storeys = List.copyOf(storeys);
  }

  /**
   * One piece of a tower.
   *
   * @param lot the single piece is of
   * @param ware as it lies, heights over the shelf
   * @param way how it rests on or in the one below; empty for the lowest
   * @param lift of its lowest point over the shelf
   * @param upsideDown whether it is turned over
   * @param top over the shelf at most: the tolerances of all pieces up to this one add up
   */
  record Storey(
      Lot lot,
      StandingWare ware,
      Optional<PileWay> way,
      Length lift,
      boolean upsideDown,
      Length top) {}

  /** Of each storey, its lot. */
  List<Lot> lots() {
    return storeys.stream().map(Storey::lot).toList();
  }

  int size() {
    return storeys.size();
  }

  /** Over the shelf, tolerances included. */
  Length height() {
    return storeys.stream().map(Storey::top).reduce(Length.ZERO, Length::longer);
  }

  long worth() {
    return storeys.stream().mapToLong(storey -> storey.lot().worth()).sum();
  }

  boolean mustGo() {
    return storeys.stream().anyMatch(storey -> storey.lot().mustGo());
  }

  /** How many pieces of a lot one such pile takes. */
  int takes(Lot lot) {
    return (int) storeys.stream().filter(storey -> storey.lot() == lot).count();
  }
}
