package shelfful.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.files.WorkWriter;
import shelfful.fixture.Loads;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Angle;
import shelfful.measure.Point;

class HistoryTest {
  @Test
  void undoingAllGivesTheFirstBytesAndRedoingAllTheLast() {
    runs(40, 50);
  }

  @Test
  @Tag("slow")
  void undoingAllOfAThousandRunsGivesTheFirstBytesAndRedoingAllTheLast() {
    runs(1000, 50);
  }

  private static void runs(int count, int edits) {
    Set<Class<?>> kinds = new HashSet<>();
    for (int run = 0; run < count; run++) {
      SplittableRandom chance = new SplittableRandom(run);
      Load load = WorkPlans.one(WorkPlans.withPiles(), chance);
      History history = History.of(WorkPlan.of(load));
      byte[] first = WorkWriter.bytes(history.now());
      for (int i = 0; i < edits; i++) {
        Edit edit = WorkPlans.edit(history.now(), chance);
        kinds.add(edit.getClass());
        history = history.done(edit);
        keepsEveryPiece(history.now(), load);
        if (chance.nextInt(8) == 0) {
          history = history.undone();
        }
      }
      byte[] last = WorkWriter.bytes(history.now());
      int steps = 0;
      while (history.lastDone().isPresent()) {
        history = history.undone();
        steps++;
      }
      assertThat(WorkWriter.bytes(history.now())).as("run %d undone", run).isEqualTo(first);
      for (int i = 0; i < steps; i++) {
        history = history.redone();
      }
      assertThat(WorkWriter.bytes(history.now())).as("run %d redone", run).isEqualTo(last);
    }
    assertThat(kinds).hasSize(Edit.class.getPermittedSubclasses().length);
  }

  private static void keepsEveryPiece(WorkPlan now, Load first) {
    int standing = now.load().placed();
    assertThat(standing + now.load().leftOut().size()).isEqualTo(first.request().pieces().size());
  }

  @Test
  void whatWasMovedByHandIsPinnedAndUndoingLetsItGo() {
    Load load = Loads.roundFull();
    History before = History.of(WorkPlan.of(load));
    History after = before.done(new Edit.MovePiece("BK-001", Point.ORIGIN, Angle.ZERO));
    assertThat(after.now().isPinned("BK-001")).isTrue();
    assertThat(after.now().placement("BK-001").orElseThrow().at()).isEqualTo(Point.ORIGIN);
    assertThat(after.undone().now()).isEqualTo(before.now());
    assertThat(after.undone().lastUndone()).isEqualTo(after.lastDone());
  }

  @Test
  void aNewStepForgetsWhatWasUndone() {
    History history =
        History.of(WorkPlan.of(Loads.roundFull()))
            .done(new Edit.MovePiece("BK-001", Point.ORIGIN, Angle.ZERO))
            .undone()
            .done(new Edit.PinPiece("BK-002", true));
    assertThat(history.lastUndone()).isEmpty();
    assertThat(history.redone()).isSameAs(history);
    assertThat(history.undone().undone().lastDone()).isEmpty();
  }

  @Test
  void nothingOnALockedLayerIsMovedAndNothingIsSetOnIt() {
    Load load = Loads.roundFull();
    Layer layer = load.layers().get(0);
    String piece = layer.placements().get(0).pieceId();
    WorkPlan locked = new Edit.LockLayer(layer.id(), true).on(WorkPlan.of(load));
    Edit move = new Edit.MovePiece(piece, Point.ORIGIN, Angle.ZERO);
    assertThat(move.fits(locked)).isFalse();
    assertThatThrownBy(() -> move.on(locked)).isInstanceOf(IllegalArgumentException.class);
    assertThat(new Edit.TakeOut(WorkPlans.out(piece)).fits(locked)).isFalse();
    assertThat(
            new Edit.SendToLayer(layer.id(), load.layers().get(1).placements().get(0)).fits(locked))
        .isFalse();
    assertThat(move.fits(new Edit.LockLayer(layer.id(), false).on(locked))).isTrue();
  }

  @Test
  void pinsOfPiecesThatAnotherPlanLeavesOutAreForgotten() {
    Load load = Loads.roundFull();
    WorkPlan pinned = new Edit.PinPiece("BK-001", true).on(WorkPlan.of(load));
    Load without = Placing.out(load, WorkPlans.out("BK-001"));
    assertThat(new Edit.AdoptPlan(without).on(pinned).pinned()).isEmpty();
    assertThat(new Edit.AdoptPlan(load).on(pinned).pinned()).containsExactly("BK-001");
  }

  @Test
  void aRemedyIsOneStepAndTheLoadBeforeItComesBack() {
    Load load = Loads.roundFull();
    Load without = Placing.out(load, WorkPlans.out("BK-001"));
    History history = History.of(WorkPlan.of(load));
    assertThat(new Edit.TakeRemedy(load).fits(history.now())).isFalse();
    History taken = history.done(new Edit.TakeRemedy(without));
    assertThat(taken.now().load()).isEqualTo(without);
    assertThat(taken.undone().now()).isEqualTo(history.now());
  }
}
