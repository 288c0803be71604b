package shelfful.ui.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.inspect.PlaceFigure;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;
import shelfful.ui.DemoPlan;
import shelfful.ui.steps.Steps;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;
import shelfful.ui.work.WorkViewModel;

class HandViewModelTest {
  private static final Length REACH = Length.ofMillimetres(5);

  @TempDir private Path folder;

  private LengthUnit unit = LengthUnit.MILLIMETRES;
  private WorkViewModel work;
  private HandViewModel hand;
  private HandCommands commands;
  private Layer layer;
  private Placement piece;

  @BeforeEach
  void openTheDemo() {
    work =
        new WorkViewModel(
            new SameThreadTaskRunner(), new RecoveryFolder(folder), new Steps(), Edit::toString);
    hand =
        new HandViewModel(
            Words.english(),
            work,
            new HandViewModel.Speech() {
              @Override
              public LengthUnit unit() {
                return unit;
              }

              @Override
              public String nameOf(String pieceId) {
                return "«" + pieceId + "»";
              }
            });
    commands = new HandCommands(Words.english(), work, hand);
    work.beginSaved(WorkPlan.of(DemoPlan.load().load()), Optional.empty());
    layer = DemoPlan.load().load().layers().get(0);
    piece = layer.placements().get(1);
  }

  private WorkPlan plan() {
    return work.plan().get().orElseThrow();
  }

  private Held held() {
    return hand.held().get().orElseThrow();
  }

  private Point beside(double x, double y) {
    return new Point(
        piece.at().x().plus(Length.ofMillimetres(x)), piece.at().y().plus(Length.ofMillimetres(y)));
  }

  @Test
  void theFigureToldIsTheJudgesInEitherUnitToAFortiethOfAMillimetre() {
    hand.takeUp(piece.pieceId());
    PlaceFigure figure = held().tentative().tightest().orElseThrow();
    double told = Double.parseDouble(held().figure().replace("−", "-").split(" ")[0]);
    assertThat(held().figure()).endsWith(" mm");
    assertThat(Math.abs(told - figure.measured().millimetres())).isLessThanOrEqualTo(0.0501);
    unit = LengthUnit.INCHES;
    hand.nudge(Length.ZERO, Length.ZERO);
    double inches = Double.parseDouble(held().figure().replace("−", "-").split(" ")[0]);
    assertThat(held().figure()).endsWith(" in");
    assertThat(Math.abs(inches * 25.4 - figure.measured().millimetres()))
        .isLessThanOrEqualTo(0.0501);
  }

  @Test
  void whereItMayNotStandTheFigureSaysHowMuchIsMissing() {
    Placement other = layer.placements().get(0);
    hand.takeUp(piece.pieceId());
    hand.carry(other.at(), Length.ZERO);
    PlaceFigure worst = held().tentative().tightest().orElseThrow();
    assertThat(held().isForbidden()).isTrue();
    assertThat(held().figure()).startsWith("−");
    assertThat(worst.spare().micrometres()).isNegative();
    assertThat(hand.told().get()).contains("short").contains("asked");
  }

  @Test
  void settingDownWhereItWasIsNoStepAndElsewhereIsOne() {
    hand.takeUp(piece.pieceId());
    assertThat(hand.setDown()).isTrue();
    assertThat(work.lastDone().get()).isEmpty();
    hand.takeUp(piece.pieceId());
    hand.carry(beside(1, 1), REACH);
    hand.carry(beside(2, 1), REACH);
    hand.setDown();
    assertThat(work.lastDone().get().orElseThrow()).isInstanceOf(Edit.MovePiece.class);
    assertThat(plan().isPinned(piece.pieceId())).isTrue();
    work.steps().undo();
    assertThat(plan().load()).isEqualTo(DemoPlan.load().load());
    assertThat(hand.setDown()).as("the hand is empty").isFalse();
  }

  @Test
  void turningAloneIsItsOwnStepAndRoundWareIsTold() {
    hand.takeUp(piece.pieceId());
    hand.turn(15);
    hand.setDown();
    assertThat(work.lastDone().get().orElseThrow()).isInstanceOf(Edit.TurnPiece.class);
    int turned = plan().placement(piece.pieceId()).orElseThrow().turn().millidegrees();
    assertThat(Math.floorMod(turned - piece.turn().millidegrees(), 360_000)).isEqualTo(15_000);
  }

  @Test
  void aLockedLayerGivesNothingAndTakesNothing() {
    commands.lock(layer.id());
    assertThat(hand.takeUp(piece.pieceId())).isFalse();
    assertThat(hand.told().get()).contains(layer.id()).contains("locked");
    Layer other = DemoPlan.load().load().layers().get(1);
    hand.takeUp(other.placements().get(0).pieceId());
    hand.toLayer(layer.id());
    assertThat(held().tentative().layerId()).isEqualTo(other.id());
    commands.takeOut(piece.pieceId());
    assertThat(plan().placement(piece.pieceId())).isPresent();
    commands.lock(layer.id());
    assertThat(hand.takeUp(piece.pieceId())).isTrue();
  }

  @Test
  void whatIsTakenOutWaitsWithItsReasonAndGoesInAgainWhereThereIsRoom() {
    commands.takeOut(piece.pieceId());
    LeftOut waiting = plan().waiting(piece.pieceId()).orElseThrow();
    assertThat(waiting.reason()).isEqualTo(LeftOut.Reason.TAKEN_OUT);
    assertThat(waiting.sentence()).isNotBlank();
    assertThat(hand.takeIn(piece.pieceId(), layer.id(), piece.at())).isTrue();
    assertThat(held().isForbidden()).isFalse();
    hand.setDown();
    assertThat(work.lastDone().get().orElseThrow()).isInstanceOf(Edit.PutIn.class);
    assertThat(plan().layerOf(piece.pieceId()).orElseThrow().id()).isEqualTo(layer.id());
  }

  @Test
  void everyKindOfStepHasAName() {
    commands.pin(piece.pieceId());
    assertThat(new EditWords(Words.english()).of(work.lastDone().get().orElseThrow()))
        .contains(piece.pieceId());
    commands.unpinAll();
    assertThat(new EditWords(Words.english()).of(work.lastDone().get().orElseThrow())).isNotBlank();
    commands.lock(layer.id());
    assertThat(new EditWords(Words.english()).of(work.lastDone().get().orElseThrow()))
        .contains(layer.id());
    assertThat(new EditWords(Words.english()).of(new Edit.AdoptPlan(DemoPlan.load().load())))
        .isNotBlank();
    commands.undo();
    assertThat(hand.told().get()).contains("Undone");
  }
}
