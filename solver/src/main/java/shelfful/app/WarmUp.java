package shelfful.app;

import java.util.List;
import java.util.Optional;
import shelfful.inspect.Inspector;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.FloorPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.planning.LoadPlanner;
import shelfful.planning.SearchBudget;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.Catcher;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;
import shelfful.ware.LidPlace;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/**
 * Plans a small made-up load on a thread of its own while files are being read, so that the first
 * real load need not wait for the program to be read in and made ready. Its outcome is thrown away.
 */
public final class WarmUp {
  private static final int PIECES = 3;

  private WarmUp() {}

  /** Starts and returns at once. */
  public static void start() {
    Thread thread = new Thread(WarmUp::plan, "warm-up");
    thread.setDaemon(true);
    thread.start();
  }

  private static void plan() {
    Inspector inspector = new Inspector();
    new LoadPlanner(request()).plan(SearchBudget.ofSteps(0), inspector::inspect);
  }

  private static LoadRequest request() {
    Firing firing = new Firing("kiln", FiringKind.GLAZE, new Cone("6"), 0, Atmosphere.OXIDATION);
    return new LoadRequest(
        studio(), List.of(batch()), firing, Optional.empty(), Optional.empty(), 1, 0);
  }

  private static Batch batch() {
    return new Batch(
        "B1",
        "cup",
        Optional.empty(),
        PIECES,
        Stage.GLAZED,
        Optional.empty(),
        false,
        1,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        LidPlace.ON);
  }

  private static Studio studio() {
    Outline round = new Outline.Round(mm(80));
    Lug handle = new Lug("handle", Angle.ZERO, mm(75), mm(18), mm(20), mm(80));
    Form cup =
        new Form(
            "cup",
            "cup",
            Stage.BISQUE,
            Shrinkage.NONE,
            Profile.upright(round, round, mm(90), List.of(handle)),
            Optional.empty(),
            new Mass(300),
            mm(1),
            mm(6));
    Shelf shelf =
        new Shelf(
            "shelf",
            "shelf",
            new ShelfOutline.FullRound(mm(500)),
            mm(19),
            Optional.empty(),
            Optional.empty(),
            3);
    List<Post> posts =
        List.of(new Post("short", mm(30), mm(38), 6), new Post("long", mm(120), mm(38), 9));
    HouseRules rules =
        new HouseRules(
            Clearances.COMMON_PRACTICE,
            true,
            2,
            new Catcher(mm(4), mm(10), new Mass(100)),
            List.of(),
            7);
    return new Studio(
        "warm-up",
        LengthUnit.MILLIMETRES,
        List.of(cup),
        List.of(),
        List.of(kiln()),
        List.of(shelf),
        posts,
        rules);
  }

  private static Kiln kiln() {
    Column column =
        new Column(
            "column",
            List.of(new ShelfPlace(List.of("shelf"), Point.ORIGIN, Angle.ZERO)),
            List.of(
                Point.ofMillimetres(0, 200),
                Point.ofMillimetres(-173, -100),
                Point.ofMillimetres(173, -100)),
            List.of());
    return new Kiln(
        "kiln",
        "kiln",
        Loading.TOP,
        new Chamber(new FloorPlan.Polygon(10, mm(560)), mm(500)),
        Optional.empty(),
        List.of(),
        List.of(new ColumnPlan("plan", "plan", List.of(column))));
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
