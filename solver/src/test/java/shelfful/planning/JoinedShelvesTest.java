package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static shelfful.planning.Scene.mm;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Forms;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/**
 * Two shelves of 250 by 100 mm, 10 mm apart, and bowls 160 mm wide on feet of 60 mm, 6 mm apart. A
 * bowl that keeps to its own side has its axis at least 5 + 30 mm inside its shelf and 80 + 3 mm
 * off the middle of the joint: on a ground of 142 by 30 mm, too small for two that stand 166 mm
 * apart. Where bowls may reach over the joint three stand in a row of 332 mm on both shelves
 * together.
 */
class JoinedShelvesTest {
  private static final ShelfOutline SLAB = new ShelfOutline.Rectangle(mm(250), mm(100));

  private static Form bowl() {
    Profile profile =
        new Profile(
            Forms.round(60),
            mm(60),
            List.of(
                new Band(Forms.round(80), Length.ZERO, mm(20)),
                new Band(Forms.round(160), mm(20), mm(60))),
            List.of());
    return new Form(
        "bowl",
        "bowl",
        Stage.BISQUE,
        Shrinkage.NONE,
        profile,
        Optional.empty(),
        Mass.ofKilograms(1),
        Length.ZERO,
        mm(6));
  }

  private static Scene scene(int shelves) {
    return new Scene()
        .chamber(700, 400)
        .shelf(SLAB)
        .shelves(shelves)
        .form(bowl())
        .batch("B", "bowl", 12);
  }

  private static List<Point> posts(double x) {
    return List.of(
        Point.ofMillimetres(x - 105, 30),
        Point.ofMillimetres(x - 105, -30),
        Point.ofMillimetres(x + 105, 30),
        Point.ofMillimetres(x + 105, -30));
  }

  private static ShelfPlace place(double x) {
    return new ShelfPlace(List.of("S"), Point.ofMillimetres(x, 0), Angle.ZERO);
  }

  private static ColumnPlan twoColumns() {
    Column left = new Column("left", List.of(place(-130)), posts(-130), List.of());
    Column right = new Column("right", List.of(place(130)), posts(130), List.of());
    return new ColumnPlan("own", "own", List.of(left, right));
  }

  private static ColumnPlan onSharedPosts() {
    List<Point> all = new ArrayList<>(posts(-130));
    all.addAll(posts(130));
    Column both = new Column("both", List.of(place(-130), place(130)), all, List.of());
    return new ColumnPlan("shared", "shared", List.of(both));
  }

  private static LoadRequest request(Scene scene, ColumnPlan plan) {
    LoadRequest old = scene.request();
    Studio studio = old.studio();
    Kiln kiln = studio.kilns().get(0);
    Kiln other = kiln.with(List.of(plan));
    return new LoadRequest(
        new Studio(
            studio.name(),
            studio.unit(),
            studio.forms(),
            studio.glazes(),
            List.of(other),
            studio.shelves(),
            studio.posts(),
            studio.rules()),
        old.batches(),
        old.firing(),
        Optional.empty(),
        Optional.empty(),
        old.seed(),
        0);
  }

  private static Load plan(LoadRequest request, long steps) {
    Load load = new LoadPlanner(request).plan(SearchBudget.ofSteps(steps), better -> {});
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    return load;
  }

  @Test
  void shelvesOfOneColumnAreAskedAboutTogether() {
    Load load = plan(request(scene(2), onSharedPosts()), 20);
    assertThat(load.layers()).extracting(Layer::place).containsExactly(0, 1);
    assertThat(load.placed()).isEqualTo(3);
  }

  @Test
  void columnsAreBuiltTogetherWhereThatHoldsMore() {
    LoadRequest request = request(scene(2), twoColumns());
    Load load = plan(request, 20);
    assertThat(load.request()).isEqualTo(request);
    assertThat(load.layers()).extracting(Layer::columnId).containsOnly("left", "right");
    assertThat(load.layers()).extracting(Layer::shelfId).containsOnly("S");
    assertThat(load.placed()).isEqualTo(3);
  }

  /** An odd shelf is of no use to a pair; the one column that gets it holds one bowl more. */
  @Test
  void anOddShelfIsNotPromisedToAPair() {
    assertThat(plan(request(scene(1), twoColumns()), 20).placed()).isEqualTo(1);
  }

  /** Two bowls of 1 kg would stand on one of the shelves. */
  @Test
  void neitherShelfCarriesMoreThanItMay() {
    Load load = plan(request(scene(2).shelvesCarry(1.5), onSharedPosts()), 20);
    assertThat(load.placed()).isEqualTo(2);
  }

  @Test
  void aLoadThatReachesOverTheJointIsGoneOnFrom() {
    LoadRequest request = request(scene(4), twoColumns());
    Load load = plan(request, 20);
    Load again =
        new LoadPlanner(request).startFrom(load, false).plan(SearchBudget.ofSteps(0), better -> {});
    assertThat(places(again)).isEqualTo(places(load));
  }

  /** Pinned, and again with both layers locked. */
  @Test
  void whatReachesOverTheJointStaysWhereItStood() {
    LoadRequest request = request(scene(2), twoColumns());
    Load load = plan(request, 20);
    Set<String> all = new HashSet<>();
    places(load).forEach(one -> all.add(one.pieceId()));
    LoadRequest pinned = request.keeping(KeptSetting.of(load, all, Set.of()));
    assertThat(places(plan(pinned, 20))).containsAll(places(load));
    Set<String> layers = new HashSet<>();
    load.layers().forEach(layer -> layers.add(layer.id()));
    LoadRequest locked = request.keeping(KeptSetting.of(load, Set.of(), layers));
    assertThat(plan(locked, 20).layers()).isEqualTo(load.layers());
  }

  private static List<Placement> places(Load load) {
    return load.layers().stream().flatMap(layer -> layer.placements().stream()).toList();
  }

  @Test
  void aJoinedLoadIsTheSameApartAndTogether() {
    LoadRequest request = request(scene(4), twoColumns());
    JoinedPlan joined = JoinedPlan.acrossColumns(request, twoColumns()).orElseThrow();
    Load load = plan(request, 20);
    Load together = JoinedLoad.of(joined, load).orElseThrow();
    assertThat(together.layers()).hasSize(load.layers().size() / 2);
    assertThat(ApartLoad.of(joined, together).layers()).isEqualTo(load.layers());
  }
}
