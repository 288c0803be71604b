package shelfful.drawing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Band;
import shelfful.ware.Catcher;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Lid;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/**
 * An invented studio with a round kiln of halves over a full shelf and a front-loader with two
 * columns.
 */
final class Pottery {
  static final Length MILLIMETRE = mm(1);

  private Pottery() {}

  static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static Studio studio() {
    return studio("Clay Lane Pottery", forms(), glazes(), drum("Big drum"));
  }

  static Studio studio(String name, List<Form> forms, List<Glaze> glazes, Kiln drum) {
    Catcher catcher = new Catcher(mm(4), mm(10), Mass.ofKilograms(0.1));
    HouseRules rules = new HouseRules(Clearances.COMMON_PRACTICE, false, 2, catcher, List.of(), 7);
    return new Studio(
        name,
        LengthUnit.MILLIMETRES,
        forms,
        glazes,
        List.of(drum, cabinet()),
        shelves(),
        posts(),
        rules);
  }

  static List<Form> forms() {
    return List.of(
        form("mug", "Mug", round(60), round(86), 98, List.of(handle())),
        form("cup", "Espresso cup", round(36), round(50), 60, List.of()),
        flared("bowl", "Soup bowl", 70, 165, 75),
        form("tray", "Oval tray", oval(150, 80), oval(220, 120), 35, List.of()),
        form("vase", "Bottle vase", round(80), round(110), 180, List.of()),
        lidded(),
        form("thimble", "Salt cellar", round(20), round(28), 25, List.of()));
  }

  static Outline round(double diameter) {
    return new Outline.Round(mm(diameter));
  }

  static Outline oval(double width, double depth) {
    return new Outline.Oval(mm(width), mm(depth));
  }

  private static Lug handle() {
    return new Lug("handle", Angle.ZERO, mm(72), mm(16), mm(20), mm(80));
  }

  static Form form(
      String id, String name, Outline foot, Outline body, double height, List<Lug> lugs) {
    return form(id, name, Profile.upright(foot, body, mm(height), lugs), Optional.empty());
  }

  private static Form form(String id, String name, Profile profile, Optional<Lid> lid) {
    return new Form(
        id,
        name,
        Stage.BISQUE,
        Shrinkage.NONE,
        profile,
        lid,
        Mass.ofKilograms(0.45),
        MILLIMETRE,
        mm(6));
  }

  private static Form flared(String id, String name, double foot, double rim, double height) {
    List<Band> bands =
        List.of(
            new Band(round(foot + 10), Length.ZERO, mm(height * 0.25)),
            new Band(round((foot + rim) / 2), mm(height * 0.25), mm(height * 0.6)),
            new Band(round(rim), mm(height * 0.6), mm(height)));
    return form(id, name, new Profile(round(foot), mm(height), bands, List.of()), Optional.empty());
  }

  private static Form lidded() {
    Lid lid = new Lid(round(100), mm(30), mm(25), Mass.ofKilograms(0.2));
    return form(
        "jar",
        "Storage jar",
        Profile.upright(round(90), round(120), mm(130), List.of()),
        Optional.of(lid));
  }

  static List<Glaze> glazes() {
    return List.of(
        glaze("tenmoku", "Tenmoku", "T", "#4a2c1a", false),
        glaze("celadon", "Celadon", "C", "#7fb59a", false),
        glaze("chun", "Chun blue", "B", "#5a7fb0", true),
        glaze("shino", "Shino", "S", "#e8d2b8", false),
        glaze("ash", "Ash green", "A", "#8a8f3c", false),
        glaze("iron", "Iron red", "R", "#9c3b22", false),
        glaze("matt", "Matt white", "M", "#efefe8", false),
        glaze("nuka", "Nuka", "N", "#c9c4dd", false),
        glaze("ochre", "Ochre", "O", "#cc8f2f", false));
  }

  static Glaze glaze(String id, String name, String letter, String colour, boolean runny) {
    return new Glaze(
        id,
        name,
        letter,
        colour,
        new Cone("6"),
        Optional.empty(),
        Optional.empty(),
        runny,
        mm(3),
        Set.of(),
        Set.of());
  }

  static List<Shelf> shelves() {
    return List.of(
        shelf("full", "Full round 533", new ShelfOutline.FullRound(mm(533))),
        shelf("half", "Half round 533", new ShelfOutline.HalfRound(mm(533), mm(4))),
        shelf("slab", "Slab 400 × 500", new ShelfOutline.Rectangle(mm(400), mm(500))));
  }

  private static Shelf shelf(String id, String name, ShelfOutline outline) {
    return new Shelf(id, name, outline, mm(19), Optional.empty(), Optional.empty(), 12);
  }

  static List<Post> posts() {
    return List.of(
        post("p25", 25.4),
        post("p51", 50.8),
        post("p102", 101.6),
        post("p152", 152.4),
        post("p203", 203.2));
  }

  private static Post post(String id, double length) {
    return new Post(id, mm(length), mm(38), 40);
  }

  static Kiln drum(String name) {
    Column full =
        new Column("base", List.of(place("full", 0, 0, 0)), ring(220, 90, 210, 330), List.of());
    Column left =
        new Column("left", List.of(place("half", 0, 0, 90)), halfRing(-1), List.of("base"));
    Column right =
        new Column("right", List.of(place("half", 0, 0, 270)), halfRing(1), List.of("base"));
    KeepOut probe =
        new KeepOut(
            name.equals("Big drum") ? "thermocouple" : name,
            KeepOut.Kind.THERMOCOUPLE,
            point(-292, 0),
            point(-262, 0),
            mm(14),
            mm(300),
            mm(320));
    KeepOut sight =
        new KeepOut(
            "peephole line",
            KeepOut.Kind.PEEPHOLE_LINE,
            point(120, -250),
            point(130, -300),
            mm(25),
            mm(180),
            mm(215));
    return new Kiln(
        "drum",
        name,
        Loading.TOP,
        new Chamber(new FloorPlan.Polygon(10, mm(584)), mm(686)),
        Optional.empty(),
        List.of(probe, sight),
        List.of(new ColumnPlan("halves", "halves over a full shelf", List.of(full, left, right))));
  }

  static Kiln cabinet() {
    Column left = new Column("A", List.of(place("slab", -215, 0, 0)), corners(-215), List.of());
    Column right = new Column("B", List.of(place("slab", 215, 0, 0)), corners(215), List.of());
    return new Kiln(
        "cabinet",
        "Front-loader",
        Loading.FRONT,
        new Chamber(new FloorPlan.Rectangle(mm(920), mm(600)), mm(900)),
        Optional.empty(),
        List.of(),
        List.of(new ColumnPlan("two", "two columns side by side", List.of(left, right))));
  }

  static Point point(double x, double y) {
    return Point.ofMillimetres(x, y);
  }

  private static ShelfPlace place(String shelf, double x, double y, double turn) {
    return new ShelfPlace(List.of(shelf), point(x, y), Angle.ofDegrees(turn));
  }

  private static List<Point> ring(double radius, double... degrees) {
    return java.util.Arrays.stream(degrees)
        .mapToObj(
            one ->
                point(
                    radius * Math.cos(Math.toRadians(one)), radius * Math.sin(Math.toRadians(one))))
        .toList();
  }

  private static List<Point> halfRing(int side) {
    return List.of(point(side * 225, 0), point(side * 35, 225), point(side * 35, -225));
  }

  private static List<Point> corners(double x) {
    return List.of(
        point(x - 170, -220), point(x + 170, -220), point(x + 170, 220), point(x - 170, 220));
  }
}
