package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static shelfful.planning.Scene.mm;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.kiln.KeepOut;
import shelfful.load.KeptProblem;
import shelfful.load.KeptProblem.Code;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;

/** Pins that cannot be are told before anything is planned, each by its name. */
class KeptProblemsTest {
  private static final LayerPlace LOWEST = new LayerPlace("F", 1, 0);

  private static Scene scene() {
    return new Scene().cup("a", 90, 60).batch("A", "a", 30);
  }

  private static PinnedPiece pin(String piece, LayerPlace layer, double x, double y) {
    return new PinnedPiece(piece, layer, Point.ofMillimetres(x, y), Angle.ZERO);
  }

  private static List<Code> codes(Scene scene, PinnedPiece... pins) {
    return codes(scene.request(), new KeptSetting("full", List.of(pins), List.of()));
  }

  private static List<Code> codes(LoadRequest request, KeptSetting kept) {
    LoadPlanner planner = new LoadPlanner(request.keeping(kept));
    List<KeptProblem> problems = planner.keptProblems();
    assertThat(problems)
        .allSatisfy(problem -> assertThat(problem.sentence()).matches("(?s)[A-Z].*\\."))
        .allSatisfy(problem -> assertThat(problem.mend()).isNotBlank());
    if (!problems.isEmpty()) {
      assertThatThrownBy(() -> planner.plan(SearchBudget.ofSteps(0), load -> {}))
          .hasMessageContaining(problems.get(0).sentence());
    }
    return problems.stream().map(KeptProblem::code).distinct().toList();
  }

  @Test
  void acceptsWhatCanStand() {
    assertThat(codes(scene(), pin("A-001", LOWEST, 0, 0))).isEmpty();
  }

  /** 90 mm across, 6 mm gap: 96 mm is exactly enough, a micrometre less is not. */
  @Test
  void refusesTwoThatStandTooClose() {
    PinnedPiece one = pin("A-001", LOWEST, 0, 0);
    assertThat(codes(scene(), one, pin("A-002", LOWEST, 96, 0))).isEmpty();
    assertThat(codes(scene(), one, pin("A-002", LOWEST, 95.999, 0)))
        .containsExactly(Code.TOO_CLOSE);
  }

  /**
   * The foot of 90 mm stands 5 mm in from the edge of a shelf of 450 mm: 175 mm from the middle.
   */
  @Test
  void refusesWhatStandsOutside() {
    assertThat(codes(scene(), pin("A-001", LOWEST, 175, 0))).isEmpty();
    assertThat(codes(scene(), pin("A-001", LOWEST, 175.001, 0))).containsExactly(Code.OUTSIDE);
  }

  /** Where another kept layer is over it there are posts; on the top there are none. */
  @Test
  void refusesWhatStandsWhereAPostMust() {
    PinnedPiece behind = pin("A-001", LOWEST, 0, 170);
    assertThat(codes(scene(), behind)).isEmpty();
    assertThat(codes(scene(), behind, pin("A-002", new LayerPlace("F", 2, 0), 0, 0)))
        .containsExactly(Code.IN_THE_WAY);
  }

  @Test
  void refusesLayersThatCannotBe() {
    PinnedPiece high = pin("A-001", new LayerPlace("F", 6, 0), 0, 0);
    assertThat(codes(scene(), high)).containsExactly(Code.NO_SUCH_LAYER);
    PinnedPiece elsewhere = pin("A-001", new LayerPlace("G", 1, 0), 0, 0);
    assertThat(codes(scene(), elsewhere)).containsExactly(Code.NO_SUCH_LAYER);
    PinnedPiece beside = pin("A-001", new LayerPlace("F", 1, 1), 0, 0);
    assertThat(codes(scene(), beside)).containsExactly(Code.NO_SUCH_LAYER);
  }

  @Test
  void refusesAnotherColumnPlan() {
    KeptSetting kept = new KeptSetting("halves", List.of(pin("A-001", LOWEST, 0, 0)), List.of());
    assertThat(codes(scene().request(), kept)).containsExactly(Code.OTHER_COLUMN_PLAN);
  }

  @Test
  void refusesPiecesThatAreNoLongerListed() {
    assertThat(codes(scene(), pin("A-031", LOWEST, 0, 0))).containsExactly(Code.NOT_ON_THE_LIST);
    assertThat(codes(scene(), pin("B-001", LOWEST, 0, 0))).containsExactly(Code.NOT_ON_THE_LIST);
  }

  @Test
  void refusesOnePieceInTwoPlaces() {
    assertThat(codes(scene(), pin("A-001", LOWEST, 0, 0), pin("A-001", LOWEST, 99, 0)))
        .containsExactly(Code.IN_TWO_PLACES);
  }

  @Test
  void refusesGlazesThatMayNotBeTogether() {
    Scene scene =
        new Scene()
            .cup("a", 90, 60)
            .glaze("chrome", Set.of(), Set.of())
            .glaze("tin", Set.of(), Set.of())
            .apart(new KeptApart("chrome", "tin", Apartness.NOT_ON_ONE_LAYER, Optional.empty()))
            .batch("C", "a", "chrome", 2)
            .batch("T", "a", "tin", 2);
    PinnedPiece chrome = pin("C-001", LOWEST, 0, 0);
    assertThat(codes(scene, chrome, pin("T-001", LOWEST, 120, 0))).containsExactly(Code.KEPT_APART);
    assertThat(codes(scene, chrome, pin("T-001", new LayerPlace("F", 2, 0), 0, 0))).isEmpty();
  }

  @Test
  void refusesMoreThanAShelfCarries() {
    Scene scene = scene().shelvesCarry(1.5);
    assertThat(codes(scene, pin("A-001", LOWEST, 0, 0))).isEmpty();
    assertThat(codes(scene, pin("A-001", LOWEST, 0, 0), pin("A-002", LOWEST, 100, 0)))
        .containsExactly(Code.TOO_HEAVY);
  }

  @Test
  void refusesWhatMeetsAKeepOutAtEveryHeight() {
    Scene scene =
        scene()
            .keepOut(
                new KeepOut(
                    "rod",
                    KeepOut.Kind.CONE_PACK,
                    Point.ORIGIN,
                    Point.ORIGIN,
                    mm(10),
                    Length.ZERO,
                    mm(400)));
    assertThat(codes(scene, pin("A-001", LOWEST, 0, 0))).containsExactly(Code.NO_STACK);
    assertThat(codes(scene, pin("A-001", LOWEST, 100, 0))).isEmpty();
  }

  @Test
  void refusesALockedLayerOverOneThatIsNotLocked() {
    Load load = scene().plan(0);
    assertThat(load.layers()).hasSizeGreaterThan(1);
    KeptSetting both = KeptSetting.of(load, Set.of(), Set.of("L2"));
    assertThat(both.layers()).extracting(LockedLayer::layer).hasSize(2);
    assertThat(codes(load.request(), both)).isEmpty();
    KeptSetting one = new KeptSetting("full", List.of(), List.of(both.layers().get(1)));
    assertThat(codes(load.request(), one)).containsExactly(Code.NOT_LOCKED_BELOW);
  }

  @Test
  void refusesALockedLayerWhoseHeightIsNotThatOfItsPosts() {
    Load load = scene().plan(0);
    LockedLayer old = LockedLayer.of(load, load.layers().get(0));
    LockedLayer raised =
        new LockedLayer(
            old.layer(), old.shelfId(), old.z().plus(new Length(1)), old.placements(), old.posts());
    assertThat(codes(load.request(), new KeptSetting("full", List.of(), List.of(raised))))
        .containsExactly(Code.LOCKED_LAYER_WRONG);
  }
}
