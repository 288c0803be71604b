package shelfful.inspect.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Load;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;
import shelfful.ware.Atmosphere;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.Zone;

/** Loads whose studio has one thing changed. */
final class StudioEdit {
  private StudioEdit() {}

  static Load kiln(Load load, UnaryOperator<Kiln> change) {
    String id = load.request().firing().kilnId();
    return LoadEdit.studio(
        load,
        studio ->
            new Studio(
                studio.name(),
                studio.unit(),
                studio.forms(),
                studio.glazes(),
                studio.kilns().stream()
                    .map(kiln -> kiln.id().equals(id) ? change.apply(kiln) : kiln)
                    .toList(),
                studio.shelves(),
                studio.posts(),
                studio.rules()));
  }

  static Load keepOut(Load load, KeepOut keepOut) {
    return kiln(
        load,
        kiln -> {
          List<KeepOut> keepOuts = new ArrayList<>(kiln.keepOuts());
          keepOuts.add(keepOut);
          return new Kiln(
              kiln.id(),
              kiln.name(),
              kiln.loading(),
              kiln.chamber(),
              kiln.hottest(),
              keepOuts,
              kiln.columnPlans());
        });
  }

  static Kiln hottest(Kiln kiln, Cone cone) {
    return new Kiln(
        kiln.id(),
        kiln.name(),
        kiln.loading(),
        kiln.chamber(),
        Optional.of(cone),
        kiln.keepOuts(),
        kiln.columnPlans());
  }

  static Load shelf(Load load, String id, UnaryOperator<Shelf> change) {
    return LoadEdit.studio(
        load,
        studio ->
            new Studio(
                studio.name(),
                studio.unit(),
                studio.forms(),
                studio.glazes(),
                studio.kilns(),
                studio.shelves().stream()
                    .map(shelf -> shelf.id().equals(id) ? change.apply(shelf) : shelf)
                    .toList(),
                studio.posts(),
                studio.rules()));
  }

  static Shelf limited(Shelf shelf, Mass limit) {
    return new Shelf(
        shelf.id(),
        shelf.name(),
        shelf.outline(),
        shelf.thickness(),
        Optional.of(limit),
        shelf.hottest(),
        shelf.count());
  }

  static Shelf hottest(Shelf shelf, Cone cone) {
    return new Shelf(
        shelf.id(),
        shelf.name(),
        shelf.outline(),
        shelf.thickness(),
        shelf.massLimit(),
        Optional.of(cone),
        shelf.count());
  }

  /** The shelves of a kind, so many in the cupboard. */
  static Load counted(Load load, String id, int count) {
    int now = load.request().studio().shelf(id).orElseThrow().count();
    return LoadEdit.studio(load, studio -> StudioChange.moreShelves(studio, id, count - now));
  }

  static Load posts(Load load, UnaryOperator<List<Post>> change) {
    return LoadEdit.studio(
        load,
        studio ->
            new Studio(
                studio.name(),
                studio.unit(),
                studio.forms(),
                studio.glazes(),
                studio.kilns(),
                studio.shelves(),
                change.apply(studio.posts()),
                studio.rules()));
  }

  static Load glaze(Load load, String id, UnaryOperator<Glaze> change) {
    return LoadEdit.studio(
        load,
        studio ->
            StudioChange.glazes(
                studio,
                studio.glazes().stream()
                    .map(glaze -> glaze.id().equals(id) ? change.apply(glaze) : glaze)
                    .toList()));
  }

  static Glaze runny(Glaze glaze) {
    return new Glaze(
        glaze.id(),
        glaze.name(),
        glaze.letter(),
        glaze.colour(),
        glaze.cone(),
        glaze.atmosphere(),
        glaze.gap(),
        true,
        glaze.bareFoot(),
        glaze.likes(),
        glaze.forbidden());
  }

  static Glaze needing(Glaze glaze, Atmosphere atmosphere) {
    return new Glaze(
        glaze.id(),
        glaze.name(),
        glaze.letter(),
        glaze.colour(),
        glaze.cone(),
        Optional.of(atmosphere),
        glaze.gap(),
        glaze.runny(),
        glaze.bareFoot(),
        glaze.likes(),
        glaze.forbidden());
  }

  static Glaze forbidding(Glaze glaze, Zone zone) {
    return new Glaze(
        glaze.id(),
        glaze.name(),
        glaze.letter(),
        glaze.colour(),
        glaze.cone(),
        glaze.atmosphere(),
        glaze.gap(),
        glaze.runny(),
        glaze.bareFoot(),
        glaze.likes(),
        Set.of(zone));
  }

  static Load rules(Load load, UnaryOperator<HouseRules> change) {
    return LoadEdit.studio(
        load,
        studio ->
            new Studio(
                studio.name(),
                studio.unit(),
                studio.forms(),
                studio.glazes(),
                studio.kilns(),
                studio.shelves(),
                studio.posts(),
                change.apply(studio.rules())));
  }

  static Load keptApart(Load load, KeptApart pair) {
    return rules(
        load,
        rules -> {
          List<KeptApart> pairs = new ArrayList<>(rules.keptApart());
          pairs.add(pair);
          return new HouseRules(
              rules.clearances(),
              rules.bellyMayPassEdge(),
              rules.mostPostPieces(),
              rules.catcher(),
              pairs,
              rules.dueSoonDays());
        });
  }

  static Load bodiesOverShelf(Load load) {
    return rules(
        load,
        rules ->
            new HouseRules(
                rules.clearances(),
                false,
                rules.mostPostPieces(),
                rules.catcher(),
                rules.keptApart(),
                rules.dueSoonDays()));
  }

  static Load clearances(Load load, UnaryOperator<Clearances> change) {
    return LoadEdit.studio(
        load, studio -> StudioChange.clearances(studio, change.apply(studio.rules().clearances())));
  }

  static Load gap(Load load, Length gap) {
    return clearances(
        load,
        old ->
            new Clearances(
                gap,
                gap,
                old.wareToPost(),
                old.wareToWall(),
                old.wareToKeepOut(),
                old.footToShelfEdge(),
                old.headroom(),
                old.underLid(),
                old.offFloor(),
                old.leastShelfToShelf()));
  }

  /** Headroom, lid clearance and height off the floor, each changed unless null stands for it. */
  static Load heights(Load load, Length headroom, Length underLid, Length offFloor) {
    return clearances(
        load,
        old ->
            new Clearances(
                old.glazedToGlazed(),
                old.bisqueToBisque(),
                old.wareToPost(),
                old.wareToWall(),
                old.wareToKeepOut(),
                old.footToShelfEdge(),
                headroom == null ? old.headroom() : headroom,
                underLid == null ? old.underLid() : underLid,
                offFloor == null ? old.offFloor() : offFloor,
                old.leastShelfToShelf()));
  }
}
