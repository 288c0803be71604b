package shelfful.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shelfful.app.FillUp;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.edit.WorkPlan;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.kiln.Chamber;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;
import shelfful.ware.Batch;
import shelfful.ware.BatchChange;
import shelfful.ware.Stage;

/** Small loads of which it is known beforehand what would help. */
class RemedyTest {
  private static final RemedyEffort EFFORT = new RemedyEffort(4, 2, 5, false);

  private static InspectedLoad judged(Load load) {
    Inspection inspection = new Inspector().inspect(load);
    assertThat(inspection).isInstanceOf(Inspection.Passed.class);
    return ((Inspection.Passed) inspection).load();
  }

  private static Explanation only(InspectedLoad load) {
    List<Explanation> explanations = new RemedySearch(load, EFFORT).explain(one -> {});
    assertThat(Claims.wrong(load, explanations)).isEmpty();
    assertThat(explanations).hasSize(1);
    return explanations.get(0);
  }

  /** The cheapest that brings a piece into this very firing. */
  private static Optional<Remedy> inThisFiring(Explanation explanation) {
    return explanation.remedies().stream().filter(one -> one.kind().isInThisFiring()).findFirst();
  }

  private static LoadDraft draft(Studio studio, Batch... batches) {
    return new LoadDraft(studio, Firings.glaze("round"), "full", batches);
  }

  /** A shelf with one beaker on it has room for another. */
  @Test
  void putsInWhatThePlannerMissed() {
    Load load =
        draft(Studios.studio(), Batches.glazed("BK", "beaker", "chalk", 2))
            .level("F", "1in")
            .place("F1", "BK-001", 0, 0, 0)
            .load();
    Remedy remedy = inThisFiring(only(judged(load))).orElseThrow();
    assertThat(remedy.kind()).isEqualTo(RemedyKind.AS_IT_STANDS);
    assertThat(remedy.sentence()).contains("F1").contains("nothing moves");
    assertThat(remedy.load().load().placed()).isEqualTo(2);
  }

  /**
   * The upper shelf is full, and under it, on posts of 101.6 mm, no vase (about 170 mm) stands. On
   * 203.2 mm ones it does, and the beakers above still keep their distance to the lid: 25.4 + 16 +
   * 203.2 + 16 + 86 + 25 = 371.6 mm.
   */
  @Test
  void takesLongerPostsForATallPiece() {
    Studio low = lowKiln(twoRoundShelves(Studios.studio()), Length.ofMillimetres(375));
    Load load =
        draft(
                low,
                Batches.glazed("BK", "beaker", "chalk", 30),
                Batches.glazed("VS", "vase", "chalk", 1))
            .level("F", "1in")
            .level("F", "4in")
            .place("F1", "BK-001", 0, 0, 0)
            .load();
    InspectedLoad start = judged(withFullUpperShelf(load));
    WaitingGroup vase =
        WaitingGroup.of(start.load()).stream()
            .filter(group -> group.batch().id().equals("VS"))
            .findFirst()
            .orElseThrow();
    Remedy remedy = inThisFiring(new RemedySearch(start, EFFORT).explain(vase)).orElseThrow();
    assertThat(remedy.kind()).isEqualTo(RemedyKind.OTHER_POSTS);
    assertThat(remedy.sentence()).contains("posts of 203.2 mm").contains("nothing else moves");
    assertThat(remedy.change().moved()).isZero();
  }

  private static Studio twoRoundShelves(Studio studio) {
    int more = 2 - studio.shelf("round").orElseThrow().count();
    return StudioChange.moreShelves(studio, "round", more);
  }

  private static Load withFullUpperShelf(Load load) {
    WorkPlan lowerLocked = new WorkPlan(load, new TreeSet<>(), new TreeSet<>(List.of("F1")));
    return new FillUp(lowerLocked)
        .run(SearchLength.ofSteps(0), PlanListener.none())
        .orElseThrow()
        .load();
  }

  /** A cone 10 batch cannot go into a cone 6 firing; a firing to its own cone takes it. */
  @Test
  void sendsWareOfAnotherConeToAFiringOfItsOwn() {
    Batch hot = Batches.glazed("HT", "beaker", "chalk", 2);
    Batch wants =
        new Batch(
            hot.id(),
            hot.formId(),
            hot.glazeId(),
            hot.quantity(),
            hot.stage(),
            Optional.of(new Cone("8")),
            hot.mustGo(),
            hot.priority(),
            hot.due(),
            hot.order(),
            hot.set(),
            hot.lidPlace());
    Load load =
        draft(Studios.studio(), Batches.glazed("BK", "beaker", "chalk", 1), wants)
            .level("F", "1in")
            .place("F1", "BK-001", 0, 0, 0)
            .load();
    InspectedLoad start = judged(because(load, LeftOut.Reason.OTHER_CONE));
    Explanation explanation = only(start);
    assertThat(inThisFiring(explanation)).isEmpty();
    Remedy later = explanation.remedies().get(0);
    assertThat(later.kind()).isEqualTo(RemedyKind.NEXT_FIRING);
    assertThat(later.request().firing().cone()).isEqualTo(new Cone("8"));
    assertThat(later.sentence()).contains("cone 8").contains("Both go");
  }

  /**
   * A bottle of 260 mm in a chamber of 280 mm: less headroom would let it in, and that is a risk.
   */
  @Test
  void namesTheSmallestRelaxationAsARisk() {
    Length tall = Length.ofMillimetres(260 + 1 + 25 + 25 + 16 - 5.05);
    Studio low = lowKiln(Studios.studio(), tall);
    Batch bottle = Batches.glazed("BT", "bottle", "chalk", 1);
    LoadRequest request =
        new LoadRequest(
            low,
            List.of(bottle),
            Firings.glaze("round"),
            Optional.of("full"),
            Optional.empty(),
            1,
            2);
    InspectedLoad start =
        new PlanALoad(request).run(SearchLength.ofSteps(2), PlanListener.none()).orElseThrow();
    assertThat(start.load().placed()).isZero();
    assertThat(start.load().leftOut().get(0).reason()).isEqualTo(LeftOut.Reason.TOO_TALL);
    Explanation explanation = only(start);
    Remedy remedy =
        explanation.remedies().stream()
            .filter(one -> one.kind() == RemedyKind.GAP_RELAXED)
            .findFirst()
            .orElseThrow();
    assertThat(remedy.sentence()).contains("A RISK").contains("under the lid");
    // The posts under the lowest shelf are 25.4 mm, 0.4 mm more than the floor asks for.
    assertThat(remedy.relaxedBy().orElseThrow().millimetres()).isBetween(5.4, 5.9);
  }

  private static Studio lowKiln(Studio studio, Length height) {
    List<Kiln> kilns =
        studio.kilns().stream()
            .filter(kiln -> kiln.id().equals("round"))
            .map(
                kiln ->
                    new Kiln(
                        kiln.id(),
                        kiln.name(),
                        kiln.loading(),
                        new Chamber(kiln.chamber().floorPlan(), height),
                        kiln.hottest(),
                        List.of(),
                        kiln.columnPlans().stream()
                            .filter(plan -> plan.id().equals("full"))
                            .toList()))
            .toList();
    return new Studio(
        studio.name(),
        studio.unit(),
        studio.forms(),
        studio.glazes(),
        kilns,
        studio.shelves(),
        studio.posts(),
        studio.rules());
  }

  private static Load because(Load load, LeftOut.Reason reason) {
    List<LeftOut> waiting =
        load.leftOut().stream()
            .map(one -> new LeftOut(one.pieceId(), reason, one.sentence(), one.mend()))
            .toList();
    return new Load(load.request(), load.columnPlanId(), load.layers(), load.posts(), waiting);
  }

  @Test
  void theSameLoadAndEffortGiveTheSameRemedies() {
    Load load =
        draft(Studios.studio(), Batches.glazed("BK", "beaker", "chalk", 4))
            .level("F", "1in")
            .place("F1", "BK-001", 0, 0, 0)
            .load();
    List<Explanation> one = new RemedySearch(judged(load), EFFORT.ofEveryKind()).explain(e -> {});
    List<Explanation> other = new RemedySearch(judged(load), EFFORT.ofEveryKind()).explain(e -> {});
    assertThat(sentences(one)).isEqualTo(sentences(other)).isNotEmpty();
  }

  private static List<String> sentences(List<Explanation> explanations) {
    return explanations.stream()
        .flatMap(
            one ->
                Stream.concat(
                    one.remedies().stream().map(Remedy::sentence), Stream.of(one.inVain())))
        .toList();
  }

  @Test
  void aFinishedPieceHasNoRemedyAndThatIsSaid() {
    Batch finished = Batches.glazed("FN", "beaker", "chalk", 1);
    Batch done = BatchChange.pieces(finished, 1, Stage.FINISHED);
    Firing firing = Firings.glaze("round");
    LoadRequest request =
        new LoadRequest(
            Studios.studio(), List.of(done), firing, Optional.of("full"), Optional.empty(), 1, 1);
    InspectedLoad start =
        new PlanALoad(request).run(SearchLength.ofSteps(1), PlanListener.none()).orElseThrow();
    Explanation explanation = only(start);
    assertThat(explanation.remedies()).isEmpty();
    assertThat(explanation.inVain()).startsWith("No remedy was found").contains("It is finished");
  }
}
