package shelfful.inspect;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.Glazes;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.Form;

/** Small scenes for single rules, on full round shelves of 540 mm unless said otherwise. */
final class Scenes {
  private Scenes() {}

  /** A round kiln, a shelf on inch posts under one on the given posts. */
  static LoadDraft round(Studio studio, List<String> upperPosts, Batch... batches) {
    return new LoadDraft(studio, Firings.glaze("round"), "full", batches)
        .level("F", "1in")
        .level("F", upperPosts.toArray(String[]::new));
  }

  static LoadDraft round(Batch... batches) {
    return round(Studios.studio(), List.of("4in"), batches);
  }

  static Batch chalk(String id, String formId, int quantity) {
    return Batches.glazed(id, formId, "chalk", quantity);
  }

  static Studio withForm(Form form) {
    Studio old = Studios.studio();
    List<Form> forms = Stream.concat(old.forms().stream(), Stream.of(form)).toList();
    return new Studio(
        old.name(),
        old.unit(),
        forms,
        Glazes.all(),
        old.kilns(),
        old.shelves(),
        old.posts(),
        old.rules());
  }

  static Studio withKiln(Kiln kiln) {
    Studio old = Studios.studio();
    List<Kiln> kilns =
        Stream.concat(
                old.kilns().stream().filter(known -> !known.id().equals(kiln.id())),
                Stream.of(kiln))
            .toList();
    return new Studio(
        old.name(),
        old.unit(),
        old.forms(),
        old.glazes(),
        kilns,
        old.shelves(),
        old.posts(),
        old.rules());
  }

  static Studio withRules(UnaryOperator<HouseRules> change) {
    return Studios.studio(change.apply(Studios.rules()));
  }

  static Studio withClearances(UnaryOperator<Clearances> change) {
    return withRules(
        old ->
            new HouseRules(
                change.apply(old.clearances()),
                old.bellyMayPassEdge(),
                old.mostPostPieces(),
                old.catcher(),
                old.keptApart(),
                old.dueSoonDays()));
  }

  static Studio withHeadroom(double millimetres) {
    return withClearances(old -> heights(old, millimetres, 25, 25));
  }

  static Studio withUnderLid(double millimetres) {
    return withClearances(old -> heights(old, 12.7, millimetres, 25));
  }

  static Studio withOffFloor(double millimetres) {
    return withClearances(old -> heights(old, 12.7, 25, millimetres));
  }

  private static Clearances heights(
      Clearances old, double headroom, double underLid, double offFloor) {
    return new Clearances(
        old.glazedToGlazed(),
        old.bisqueToBisque(),
        old.wareToPost(),
        old.wareToWall(),
        old.wareToKeepOut(),
        old.footToShelfEdge(),
        mm(headroom),
        mm(underLid),
        mm(offFloor),
        old.leastShelfToShelf());
  }

  /** A kiln with one plan {@code one} of these columns. */
  static Kiln kiln(String id, FloorPlan floorPlan, List<KeepOut> keepOuts, Column... columns) {
    return new Kiln(
        id,
        id,
        Loading.TOP,
        new Chamber(floorPlan, mm(700)),
        Optional.empty(),
        keepOuts,
        List.of(new ColumnPlan("one", "one", List.of(columns))));
  }

  static Column column(String id, String shelfId, double x, double y, Point... posts) {
    ShelfPlace place = new ShelfPlace(List.of(shelfId), Point.ofMillimetres(x, y), Angle.ZERO);
    return new Column(id, List.of(place), List.of(posts), List.of());
  }

  static Point at(double x, double y) {
    return Point.ofMillimetres(x, y);
  }

  static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
