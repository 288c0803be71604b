package shelfful.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Loads;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/** A pile is one thing in the hand, whichever of its pieces is taken up. */
class PilesByHandTest {
  private static final List<String> PILE = List.of("DW-001", "DW-002", "DW-003");
  private static final Set<String> BY_DISTANCE =
      Set.of(
          "piecesTooClose",
          "pieceTooCloseToPost",
          "pieceTooCloseToWall",
          "pieceTooCloseToKeepOut",
          "pieceHitsShelf",
          "pieceTallerThanHeadroomAllows",
          "pieceTooCloseToLid",
          "footOverEdge");

  private final WorkPlan plan = WorkPlan.of(Loads.piles());
  private final Point there = Point.ofMillimetres(-80, 30);

  private static List<Placement> pile(WorkPlan of) {
    return PILE.stream().map(id -> of.placement(id).orElseThrow()).toList();
  }

  @Test
  void movesWholeWhicheverPieceIsMoved() {
    for (String id : PILE) {
      WorkPlan moved = new Edit.MovePiece(id, there, Angle.ofDegrees(30)).on(plan);
      assertThat(pile(moved)).extracting(Placement::at).containsOnly(there);
      assertThat(pile(moved)).extracting(Placement::turn).containsOnly(Angle.ofDegrees(30));
      assertThat(pile(moved).stream().map(Placement::rest).toList())
          .isEqualTo(pile(plan).stream().map(Placement::rest).toList());
      assertThat(moved.pinned()).containsExactlyElementsOf(PILE);
    }
  }

  @Test
  void turnsAndIsPinnedWhole() {
    WorkPlan turned = new Edit.TurnPiece("DW-003", Angle.ofDegrees(90)).on(plan);
    assertThat(pile(turned)).extracting(Placement::turn).containsOnly(Angle.ofDegrees(90));
    WorkPlan pinned = new Edit.PinPiece("DW-002", true).on(plan);
    assertThat(pinned.pinned()).containsExactlyElementsOf(PILE);
    assertThat(new Edit.PinPiece("DW-001", false).on(pinned).pinned()).isEmpty();
  }

  @Test
  void goesToAnotherLayerWhole() {
    Placement to = new Placement("DW-002", there, Angle.ZERO, false);
    WorkPlan sent = new Edit.SendToLayer("F2", to).on(plan);
    PILE.forEach(id -> assertThat(sent.layerOf(id).orElseThrow().id()).isEqualTo("F2"));
    assertThat(pile(sent))
        .extracting(one -> one.rest().isOnShelf())
        .containsExactly(true, false, false);
    assertThat(new Inspector().judge(sent.load()).orElseThrow().faults())
        .extracting(finding -> finding.rule())
        .doesNotContain("pieceFloats", "pileNotAllowed");
  }

  @Test
  void waitsWholeAndGoesInAgainPieceByPiece() {
    WorkPlan out = new Edit.TakeOut(WorkPlans.out("DW-003")).on(plan);
    PILE.forEach(id -> assertThat(out.waiting(id)).isPresent());
    Placement alone = new Placement("DW-003", there, Angle.ZERO, false);
    WorkPlan in = new Edit.PutIn("F2", alone).on(out);
    assertThat(in.placement("DW-003").orElseThrow().rest()).isEqualTo(Rest.ON_SHELF);
    assertThat(in.waiting("DW-001")).isPresent();
  }

  /**
   * The pile's pieces have one tolerance, so what the hand tells is exactly what the judge says.
   */
  @Test
  void theHandAllowsWhatTheJudgeAllows() {
    SplittableRandom chance = new SplittableRandom(7);
    int allowed = 0;
    for (int i = 0; i < 300; i++) {
      String id = WorkPlans.one(List.of("DW-001", "DW-003", "DW-005", "DW-008"), chance);
      Placement near = WorkPlans.nudged(plan.placement(id).orElseThrow(), 40, chance);
      boolean told = Hand.of(plan, id).orElseThrow().at("F1", near.at(), near.turn()).mayStand();
      WorkPlan moved = new Edit.MovePiece(id, near.at(), near.turn()).on(plan);
      assertThat(told).as(near.toString()).isEqualTo(faults(moved, id).isEmpty());
      allowed += told ? 1 : 0;
    }
    assertThat(allowed).isBetween(10, 290);
  }

  private static List<String> faults(WorkPlan moved, String id) {
    Set<String> pile =
        moved.pile(id).pieces().stream().map(Placement::pieceId).collect(Collectors.toSet());
    Load load = moved.load();
    return new Inspector()
        .judge(load).orElseThrow().faults().stream()
            .filter(fault -> BY_DISTANCE.contains(fault.rule()))
            .filter(fault -> fault.pieceIds().stream().anyMatch(pile::contains))
            .map(fault -> fault.sentence())
            .toList();
  }
}
