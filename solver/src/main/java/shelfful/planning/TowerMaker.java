package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.planning.Tower.Storey;
import shelfful.ware.BisqueSetting;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;
import shelfful.ware.Hollow;
import shelfful.ware.Part;
import shelfful.ware.Piece;
import shelfful.ware.PileWay;
import shelfful.ware.Piling;
import shelfful.ware.StandingWare;

/**
 * Every way of setting ready pieces on or in each other that the forms of a bisque firing allow:
 * piles of each height, pairs rim to rim and foot to foot, and a small form inside a large one.
 */
final class TowerMaker {
  private final LoadRequest request;
  private final FiringDoor door;

  TowerMaker(LoadRequest request) {
    this.request = request;
    this.door = new FiringDoor(request);
  }

  /** Whether any pot of a request might be set with others. */
  static boolean mayPile(LoadRequest request) {
    return request.firing().kind() == FiringKind.BISQUE
        && request.batches().stream()
            .map(batch -> request.studio().form(batch.formId()).orElseThrow())
            .anyMatch(form -> !form.bisque().isAlone());
  }

  /** Whether a piece is a plain pot whose form may be set on, in or under others. */
  boolean mayPile(Piece piece) {
    if (request.firing().kind() != FiringKind.BISQUE || piece.part() != Part.POT) {
      return false;
    }
    String id = piece.batch().formId();
    return !door.form(piece).bisque().isAlone()
        || request.studio().forms().stream()
            .flatMap(form -> form.bisque().hollow().stream())
            .anyMatch(hollow -> hollow.formIds().contains(id));
  }

  /** Every tower that can be made of pieces of some lots, each lot of pots that may be piled. */
  List<Tower> towers(List<Lot> lots) {
    List<Tower> towers = new ArrayList<>();
    for (Lot lot : lots) {
      BisqueSetting setting = form(lot).bisque();
      setting.piled().ifPresent(piled -> towers.addAll(piled(lot, piled)));
      if (setting.rimToRim()) {
        pair(lot, PileWay.RIM_TO_RIM).ifPresent(towers::add);
      }
      if (setting.footToFoot()) {
        pair(lot, PileWay.FOOT_TO_FOOT).ifPresent(towers::add);
      }
      setting
          .hollow()
          .ifPresent(
              hollow ->
                  lots.stream()
                      .filter(small -> hollow.formIds().contains(form(small).id()))
                      .filter(small -> small != lot)
                      .flatMap(small -> inside(lot, small, hollow).stream())
                      .forEach(towers::add));
    }
    return towers;
  }

  private List<Tower> piled(Lot lot, Piling piled) {
    List<Tower> towers = new ArrayList<>();
    List<Storey> storeys = new ArrayList<>();
    storeys.add(lowest(lot, false));
    Length increment = piled.increment().scaledUp(factor(lot));
    Length lift = Length.ZERO;
    int most = Math.min(piled.mostHigh(), lot.size());
    while (storeys.size() < most && carries(lot, storeys.size() * lot.grams())) {
      lift = lift.plus(increment);
      storeys.add(next(storeys, lot, PileWay.NESTED, lift));
      towers.add(new Tower(storeys));
    }
    return towers;
  }

  private Optional<Tower> pair(Lot lot, PileWay way) {
    if (lot.size() < 2 || !carries(lot, lot.grams())) {
      return Optional.empty();
    }
    List<Storey> storeys = new ArrayList<>();
    storeys.add(lowest(lot, way == PileWay.FOOT_TO_FOOT));
    storeys.add(next(storeys, lot, way, lot.kind().ware().height()));
    return Optional.of(new Tower(storeys));
  }

  private Optional<Tower> inside(Lot lot, Lot small, Hollow hollow) {
    if (!carries(lot, small.grams()) || !fits(lot, small, hollow)) {
      return Optional.empty();
    }
    Form form = form(lot);
    Length floor = form.profile().height().minus(hollow.deep()).scaledUp(factor(lot));
    List<Storey> storeys = new ArrayList<>();
    storeys.add(lowest(lot, false));
    storeys.add(next(storeys, small, PileWay.INSIDE, floor));
    return Optional.of(new Tower(storeys));
  }

  /** Whether a small form, lugs and both tolerances included, stays within a hollow all round. */
  private boolean fits(Lot lot, Lot small, Hollow hollow) {
    double factor = factor(lot);
    long slack = 2 * (form(lot).tolerance().micrometres() + form(small).tolerance().micrometres());
    long wide = (long) Math.floor(hollow.clear().width().micrometres() * factor) - slack;
    long deep = (long) Math.floor(hollow.clear().depth().micrometres() * factor) - slack;
    StandingWare ware = small.kind().ware();
    boolean bands =
        ware.bands().stream()
            .allMatch(
                band ->
                    band.outline().width().micrometres() <= wide
                        && band.outline().depth().micrometres() <= deep);
    long reach = Math.min(wide, deep);
    return bands && ware.lugs().stream().allMatch(lug -> 2 * lug.reach().micrometres() <= reach);
  }

  private boolean carries(Lot lot, long grams) {
    return form(lot).bisque().carries().map(most -> grams <= most.grams()).orElse(true);
  }

  private Storey lowest(Lot lot, boolean upsideDown) {
    StandingWare ware = lot.kind().ware().lying(upsideDown, Length.ZERO);
    Length top = ware.height().plus(form(lot).tolerance());
    return new Storey(lot, ware, Optional.empty(), Length.ZERO, upsideDown, top);
  }

  /** The tolerances of all that carries it count for the height of a piece, and its own. */
  private Storey next(List<Storey> below, Lot lot, PileWay way, Length lift) {
    Length tolerances = form(lot).tolerance();
    for (Storey storey : below) {
      tolerances = tolerances.plus(form(storey.lot()).tolerance());
    }
    boolean upsideDown = way == PileWay.RIM_TO_RIM;
    StandingWare ware = lot.kind().ware().lying(upsideDown, lift);
    Length top = ware.height().plus(tolerances);
    return new Storey(lot, ware, Optional.of(way), lift, upsideDown, top);
  }

  private Form form(Lot lot) {
    return door.form(lot.pieces().get(0));
  }

  private double factor(Lot lot) {
    Form form = form(lot);
    return form.shrinkage().factor(form.measuredAt(), request.firing().kind().goesIn());
  }
}
