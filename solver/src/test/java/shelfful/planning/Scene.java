package shelfful.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import shelfful.fixture.Forms;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.Catcher;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.LidPlace;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;
import shelfful.ware.Zone;

/**
 * One small pottery that a test changes bit by bit. To begin with: a round chamber of 500 mm, 400
 * mm high; five round shelves of 450 mm, 10 mm thick, on three posts near the edge; twelve posts
 * each of 20, 80 and 120 mm; headroom and room under the lid 10 mm, off the floor 20 mm; forms of
 * no tolerance; a glaze firing to cone 6.
 */
final class Scene {
  static final Cone SIX = new Cone("6");

  private double across = 500;
  private double high = 400;
  private Optional<Cone> shelfHottest = Optional.empty();
  private Optional<Mass> massLimit = Optional.empty();
  private int shelves = 5;
  private ShelfOutline outline = new ShelfOutline.FullRound(mm(450));
  private final List<Shelf> otherShelves = new ArrayList<>();
  private final List<Post> posts = new ArrayList<>();
  private final List<KeepOut> keepOuts = new ArrayList<>();
  private final List<Form> forms = new ArrayList<>();
  private final List<Glaze> glazes = new ArrayList<>();
  private final List<Batch> batches = new ArrayList<>();
  private final List<KeptApart> keptApart = new ArrayList<>();
  private Clearances clearances =
      new Clearances(
          mm(6), mm(0), mm(10), mm(20), mm(20), mm(5), mm(10), mm(10), mm(20), Length.ZERO);
  private Firing firing = new Firing("K", FiringKind.GLAZE, SIX, 0, Atmosphere.OXIDATION);
  private long seed = 7;

  Scene() {
    post("20", 20, 12).post("80", 80, 12).post("120", 120, 12);
  }

  /** Cups of three sizes, more of them than go in. */
  static Scene ofThreeCups() {
    return new Scene()
        .chamber(560, 700)
        .shelves(8)
        .post("100", 100, 24)
        .cup("a", 60, 70)
        .cup("b", 80, 90)
        .cup("c", 110, 50)
        .batch("A", "a", 50)
        .batch("B", "b", 40)
        .batch("C", "c", 30);
  }

  static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  Scene chamber(double newAcross, double newHigh) {
    across = newAcross;
    high = newHigh;
    return this;
  }

  Scene shelves(int count) {
    shelves = count;
    return this;
  }

  Scene shelf(ShelfOutline newOutline) {
    outline = newOutline;
    return this;
  }

  Scene shelvesUpTo(String cone) {
    shelfHottest = Optional.of(new Cone(cone));
    return this;
  }

  Scene shelvesCarry(double kilograms) {
    massLimit = Optional.of(Mass.ofKilograms(kilograms));
    return this;
  }

  /** Another kind of shelf for the same place, liked less than the first; of no mass limit. */
  Scene otherShelf(String id, double thickness, int count) {
    otherShelves.add(
        new Shelf(id, id, outline, mm(thickness), Optional.empty(), Optional.empty(), count));
    return this;
  }

  Scene noPosts() {
    posts.clear();
    return this;
  }

  Scene post(String id, double length, int count) {
    posts.add(new Post(id, mm(length), mm(30), count));
    return this;
  }

  Scene keepOut(KeepOut keepOut) {
    keepOuts.add(keepOut);
    return this;
  }

  Scene clearances(Clearances newClearances) {
    clearances = newClearances;
    return this;
  }

  Scene firing(Firing newFiring) {
    firing = newFiring;
    return this;
  }

  Scene seed(long newSeed) {
    seed = newSeed;
    return this;
  }

  /** A cylinder, bisque size, of no tolerance, a kilogram heavy. */
  Scene cup(String id, double diameter, double height) {
    return form(drum(id, diameter, height));
  }

  /** The form of such a cylinder. */
  static Form drum(String id, double diameter, double height) {
    Profile profile =
        Profile.upright(Forms.round(diameter), Forms.round(diameter), mm(height), List.of());
    return new Form(
        id,
        id,
        Stage.BISQUE,
        Shrinkage.NONE,
        profile,
        Optional.empty(),
        Mass.ofKilograms(1),
        Length.ZERO,
        mm(6));
  }

  Scene form(Form form) {
    forms.add(form);
    return this;
  }

  Scene glaze(String id, Set<Zone> likes, Set<Zone> forbidden) {
    return glaze(
        new Glaze(
            id,
            id,
            id,
            "#808080",
            SIX,
            Optional.empty(),
            Optional.empty(),
            false,
            Length.ZERO,
            likes,
            forbidden));
  }

  Scene glaze(Glaze glaze) {
    glazes.add(glaze);
    return this;
  }

  Scene apart(KeptApart rule) {
    keptApart.add(rule);
    return this;
  }

  /** Glazed pieces with nothing special about them, in a batch of that id. */
  Scene batch(String id, String formId, int quantity) {
    return batch(plain(id, formId, quantity));
  }

  Scene batch(String id, String formId, String glazeId, int quantity) {
    Batch batch = plain(id, formId, quantity);
    return batch(
        new Batch(
            id,
            formId,
            Optional.of(glazeId),
            quantity,
            batch.stage(),
            batch.cone(),
            false,
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            LidPlace.ON));
  }

  Scene batch(Batch batch) {
    batches.add(batch);
    return this;
  }

  /** Changes the batch added last. */
  Scene but(UnaryOperator<Batch> change) {
    batches.set(batches.size() - 1, change.apply(batches.get(batches.size() - 1)));
    return this;
  }

  static Batch plain(String id, String formId, int quantity) {
    return new Batch(
        id,
        formId,
        Optional.empty(),
        quantity,
        Stage.GLAZED,
        Optional.empty(),
        false,
        1,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        LidPlace.ON);
  }

  LoadRequest request() {
    double reach = 450 / 2.0 - 15 - 5;
    List<Point> three = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double angle = Math.PI / 2 + 2 * Math.PI * i / 3;
      three.add(Point.ofMillimetres(reach * Math.cos(angle), reach * Math.sin(angle)));
    }
    List<Shelf> kinds = new ArrayList<>();
    kinds.add(new Shelf("S", "Shelf", outline, mm(10), massLimit, shelfHottest, shelves));
    kinds.addAll(otherShelves);
    ShelfPlace place =
        new ShelfPlace(kinds.stream().map(Shelf::id).toList(), Point.ORIGIN, Angle.ZERO);
    Kiln kiln =
        new Kiln(
            "K",
            "Kiln",
            Loading.TOP,
            new Chamber(new FloorPlan.Round(mm(across)), mm(high)),
            Optional.empty(),
            keepOuts,
            List.of(
                new ColumnPlan(
                    "full", "full", List.of(new Column("F", List.of(place), three, List.of())))));
    HouseRules rules =
        new HouseRules(
            clearances, true, 2, new Catcher(mm(4), mm(10), new Mass(100)), keptApart, 7);
    Studio studio =
        new Studio(
            "Scene", LengthUnit.MILLIMETRES, forms, glazes, List.of(kiln), kinds, posts, rules);
    return new LoadRequest(studio, batches, firing, Optional.empty(), Optional.empty(), seed, 0);
  }

  Stand stand() {
    LoadRequest request = request();
    return new Stand(request, request.studio().kilns().get(0).columnPlans().get(0));
  }

  Load plan(long steps) {
    return new LoadPlanner(request()).plan(SearchBudget.ofSteps(steps), load -> {});
  }
}
