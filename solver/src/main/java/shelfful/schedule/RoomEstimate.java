package shelfful.schedule;

import java.util.Optional;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.studio.Clearances;
import shelfful.studio.Studio;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.LidPlace;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Part;
import shelfful.ware.StandingWare;

/**
 * A quick figure for how much of a kiln ware takes: its widest square with the gap round it, times
 * the height of its level and shelf, over shelf area times chamber height. It only guides the
 * search, and is set right by every load that is really planned.
 */
final class RoomEstimate {
  /** A kilnful. */
  static final int WHOLE = 10_000;

  /** What a hexagonal arrangement takes of the squares round its discs: √3/2. */
  private static final double HEXAGONAL = Math.sqrt(3) / 2;

  private final Studio studio;

  RoomEstimate(Studio studio) {
    this.studio = studio;
  }

  /** What a unit takes of a kiln, in ten-thousandths, at least 1. */
  int of(UnitKind kind, Kiln kiln) {
    double volume = kind.parts().stream().mapToDouble(part -> volume(kind, part)).sum();
    return (int) Math.max(1, Math.min(50L * WHOLE, Math.round(WHOLE * volume / room(kiln))));
  }

  private double volume(UnitKind kind, PartSpec spec) {
    Form form = studio.form(spec.formId()).orElseThrow();
    boolean lidded = form.lid().isPresent();
    boolean beside = lidded && spec.lidPlace() != LidPlace.ON;
    double pot = volume(kind, spec, form, lidded && !beside ? Part.POT_WITH_LID : Part.POT);
    return beside ? pot + volume(kind, spec, form, Part.LID) : pot;
  }

  private double volume(UnitKind kind, PartSpec spec, Form form, Part part) {
    Clearances clearances = studio.rules().clearances();
    StandingWare ware = StandingWare.of(form, part, kind.kind().goesIn(), Optional.empty());
    double gap =
        kind.kind().goesIn() == shelfful.ware.Stage.BONE_DRY
            ? clearances.bisqueToBisque().millimetres()
            : gap(spec, clearances);
    gap += form.tolerance().millimetres();
    double width = 0;
    double depth = 0;
    for (Band band : ware.bands()) {
      Outline outline = band.outline();
      width = Math.max(width, outline.width().millimetres());
      depth = Math.max(depth, outline.depth().millimetres());
    }
    double area = (width + gap) * (depth + gap) * HEXAGONAL;
    for (Lug lug : ware.lugs()) {
      double out = lug.reach().millimetres() - Math.min(width, depth) / 2;
      area += Math.max(0, out) * lug.width().millimetres();
    }
    double level =
        Math.max(
            ware.height().millimetres() + clearances.headroom().millimetres(),
            clearances.leastShelfToShelf().millimetres());
    return area * (level + thickness());
  }

  private double gap(PartSpec spec, Clearances clearances) {
    double house = clearances.glazedToGlazed().millimetres();
    return spec.glazeId()
        .flatMap(studio::glaze)
        .flatMap(Glaze::gap)
        .map(own -> Math.max(own.millimetres(), house))
        .orElse(house);
  }

  private double thickness() {
    return studio.shelves().stream()
        .mapToDouble(shelf -> shelf.thickness().millimetres())
        .average()
        .orElse(0);
  }

  private double room(Kiln kiln) {
    Clearances clearances = studio.rules().clearances();
    Chamber chamber = kiln.chamber();
    double height =
        chamber.height().millimetres()
            - clearances.offFloor().millimetres()
            - clearances.underLid().millimetres();
    double area = kiln.columnPlans().stream().mapToDouble(this::area).max().orElse(1);
    return Math.max(1, area) * Math.max(1, height);
  }

  /** Of the shelves that stand on the floor. */
  private double area(ColumnPlan plan) {
    return plan.columns().stream()
        .filter(column -> column.standsOn().isEmpty())
        .flatMap((Column column) -> column.places().stream())
        .mapToDouble(this::area)
        .sum();
  }

  private double area(ShelfPlace place) {
    return place.shelfIds().stream()
        .flatMap(id -> studio.shelf(id).stream())
        .map(Shelf::outline)
        .mapToDouble(ShelfOutline::squareMillimetres)
        .max()
        .orElse(0);
  }
}
