package shelfful.files;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Firing;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/**
 * A load of five pieces set by hand in the demo studio's round kiln: two layers, and one piece that
 * waits.
 */
final class SmallPlan {
  private static final List<Point> POSTS =
      List.of(
          Point.ofMillimetres(0, 206),
          Point.ofMillimetres(-178, -103),
          Point.ofMillimetres(178, -103));

  private SmallPlan() {}

  static InspectedLoad inspected() {
    return inspected(load());
  }

  static InspectedLoad inspected(Load load) {
    Inspection inspection = new Inspector().inspect(load);
    if (inspection instanceof Inspection.Passed passed) {
      return passed.load();
    }
    throw new AssertionError("The load set by hand breaks a rule: " + inspection);
  }

  static Load load() {
    LoadRequest request =
        new LoadRequest(
            SmallStudio.demo(),
            List.of(
                batch("B1", "mug", "clear-gloss", 2),
                batch("B2", "mug", "river-blue", 1),
                batch("B3", "egg-cup", "tin-white", 1),
                batch("B4", "bowl-small", "ash-celadon", 1)),
            new Firing("round-top", FiringKind.GLAZE, new Cone("6"), 0, Atmosphere.OXIDATION),
            Optional.of("full"),
            Optional.of(LocalDate.of(2026, 6, 1)),
            -42,
            1000);
    // On posts of 1 in: 25.4 + 19 mm. Then 4 in and 1/2 in: 44.4 + 114.3 + 19 mm.
    Layer lower =
        layer(
            "L1", 1, 44.4, List.of(at("B1-001", 0, 0, 0), at("B1-002", 150, 10, 90.5), catcher()));
    Layer upper = layer("L2", 2, 177.7, List.of(at("B3-001", 0, 100.125, 0)));
    return new Load(
        request,
        "full",
        List.of(lower, upper),
        Stream.concat(
                POSTS.stream().map(at -> post(at, 0, "L1", "1-inch")),
                POSTS.stream().map(at -> post(at, 44.4, "L2", "4-inch", "half-inch")))
            .toList(),
        List.of(
            new LeftOut(
                "B4-001",
                LeftOut.Reason.OTHER_CONE,
                "Ash celadon is fired to cone 10, this firing goes to cone 6.",
                "Fire it with others of cone 10.")));
  }

  /** The same with a piece and a layer that stay. */
  static Load kept() {
    Load load = load();
    KeptSetting kept = KeptSetting.of(load, Set.of("B1-002"), Set.of("L2"));
    return new Load(
        load.request().keeping(kept),
        load.columnPlanId(),
        load.layers(),
        load.posts(),
        load.leftOut());
  }

  private static Placement catcher() {
    return new Placement("B2-001", Point.ofMillimetres(-150.5, 0), Angle.ZERO, true);
  }

  private static Placement at(String piece, double x, double y, double turn) {
    return new Placement(piece, Point.ofMillimetres(x, y), Angle.ofDegrees(turn), false);
  }

  private static Layer layer(String id, int level, double z, List<Placement> placements) {
    return new Layer(id, "full", level, 0, "full", Length.ofMillimetres(z), placements);
  }

  private static StandingPost post(Point at, double base, String carries, String... posts) {
    return new StandingPost(at, Length.ofMillimetres(base), List.of(posts), List.of(carries));
  }

  private static Batch batch(String id, String form, String glaze, int quantity) {
    return new Batch(
        id,
        form,
        Optional.of(glaze),
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
}
