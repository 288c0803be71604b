package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.drawing.LayerList;
import shelfful.drawing.Sheet;
import shelfful.edit.Difference;
import shelfful.edit.WorkPlan;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ui.DemoPlan;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;
import shelfful.ware.Batch;

class DeskViewModelTest {
  @TempDir private static Path folder;

  private final DeskViewModel model = model(new SameThreadTaskRunner());

  private static DeskViewModel model(TaskRunner tasks) {
    return new DeskViewModel(
        Words.english(),
        tasks,
        SearchLength.ofSteps(0),
        new RecoveryFolder(folder.resolve("recovery")));
  }

  private ShownLoad shown() {
    return model.shown().get().orElseThrow();
  }

  private List<String> layers() {
    return shown().lists().layers().stream().map(LayerList::layerId).toList();
  }

  @Test
  void showsNothingAtFirst() {
    assertThat(model.shown().get()).isEmpty();
    assertThat(model.state().get()).isEqualTo("No plan yet");
    model.chooseLayerAfter(1);
    model.chooseLayer("L1");
    model.stop();
    assertThat(model.layerId().get()).isEmpty();
  }

  @Test
  void opensAPlanOnItsFirstLayer() {
    model.open(DemoPlan.file(folder));
    assertThat(model.messages().notice().get()).isEmpty();
    assertThat(model.layerId().get()).isEqualTo(layers().get(0));
    assertThat(model.state().get())
        .startsWith(DemoPlan.load().load().placed() + " of ")
        .contains("on " + DemoPlan.load().load().layers().size() + " shelves; smallest gap ")
        .endsWith(" mm. From demo.plan.json.");
  }

  @Test
  void listsEveryPieceEitherInOrWaiting() {
    model.open(DemoPlan.file(folder));
    int in = shown().lists().layers().stream().mapToInt(layer -> layer.rows().size()).sum();
    int waiting = shown().lists().waiting().stream().mapToInt(row -> row.count()).sum();
    assertThat(in + waiting).isEqualTo(DemoPlan.load().load().request().pieces().size());
    assertThat(shown().lists().waiting()).allMatch(row -> !row.reason().isBlank());
  }

  @Test
  void goesThroughTheLayersInLoadingOrderAndStopsAtTheEnds() {
    model.open(DemoPlan.file(folder));
    List<String> layers = layers();
    model.chooseLayerAfter(-1);
    assertThat(model.layerId().get()).isEqualTo(layers.get(0));
    layers.forEach(
        id -> {
          assertThat(model.layerId().get()).isEqualTo(id);
          model.chooseLayerAfter(1);
        });
    assertThat(model.layerId().get()).isEqualTo(layers.get(layers.size() - 1));
    model.chooseLayer("no such layer");
    assertThat(model.layerId().get()).isEqualTo(layers.get(layers.size() - 1));
  }

  @Test
  void aClickOnAPieceChoosesItAndAnotherLayerLetsGoOfIt() {
    model.open(DemoPlan.file(folder));
    String layer = layers().get(0);
    Sheet sheet = shown().sheets(layer).get(0);
    for (Placement placement : DemoPlan.load().load().layer(layer).orElseThrow().placements()) {
      model.choosePiece(
          shown().pieceAt(layer, sheet.plan().orElseThrow().at(placement.at())).orElseThrow());
      assertThat(model.pieceId().get()).isEqualTo(placement.pieceId());
    }
    model.chooseLayerAfter(1);
    assertThat(model.pieceId().get()).isEmpty();
  }

  @Test
  void aFileThatIsNoPlanIsRefusedWithReasonsAndThePlanStays() {
    model.open(DemoPlan.file(folder));
    ShownLoad before = shown();
    String state = model.state().get();
    model.open(DemoPlan.write(folder.resolve("torn.json"), new byte[] {'{'}));
    assertThat(model.messages().notice().get().orElseThrow().heading())
        .contains("could not be opened");
    assertThat(model.messages().notice().get().orElseThrow().sentences())
        .first()
        .asString()
        .contains("torn");
    assertThat(shown()).isSameAs(before);
    assertThat(model.state().get()).isEqualTo(state);
    model.open(folder.resolve("not-there.json"));
    assertThat(model.messages().notice().get().orElseThrow().sentences()).isNotEmpty();
    model.closeNotice();
    assertThat(model.messages().notice().get()).isEmpty();
  }

  @Test
  void aPlanThatBreaksARuleIsNotShown() throws IOException {
    String plan = Files.readString(DemoPlan.file(folder));
    String piece = DemoPlan.load().load().layers().get(0).placements().get(0).pieceId();
    int from = plan.indexOf('"' + piece + '"');
    int x = plan.indexOf("\"x\"", from);
    String moved =
        plan.substring(0, x) + plan.substring(x).replaceFirst("\"x\"\\s*:\\s*[-0-9.]+", "\"x\": 0");
    model.open(
        DemoPlan.write(folder.resolve("moved.json"), moved.getBytes(StandardCharsets.UTF_8)));
    assertThat(model.shown().get()).isEmpty();
    assertThat(model.messages().notice().get().orElseThrow().heading()).contains("breaks rules");
    assertThat(model.messages().notice().get().orElseThrow().sentences()).isNotEmpty();
  }

  @Test
  void theDemoIsPlannedAndSaidInWords() {
    model.tryTheDemo();
    assertThat(model.planning().get()).isFalse();
    assertThat(shown().lists().counts()).contains(" of 60 in");
    assertThat(model.state().get()).startsWith(shown().lists().counts()).endsWith("Planned.");
  }

  @Test
  void aChangedListIsOneMoreStepThatMovesLittleAndIsTakenBackAsAWhole() {
    LoadRequest request = DemoPlan.load().load().request();
    model.plan(request);
    WorkPlan before = model.work().plan().get().orElseThrow();
    List<Batch> batches = new ArrayList<>(request.batches());
    Batch like = batches.get(0);
    batches.add(
        new Batch(
            "more",
            like.formId(),
            like.glazeId(),
            3,
            like.stage(),
            like.cone(),
            like.mustGo(),
            like.priority(),
            like.due(),
            like.order(),
            like.set(),
            like.lidPlace()));
    LoadRequest more =
        new LoadRequest(
            request.studio(),
            batches,
            request.firing(),
            request.columnPlanId(),
            request.day(),
            request.seed(),
            request.steps());
    assertThat(model.isOnDesk(more)).isTrue();
    model.planChanged(more);
    WorkPlan after = model.work().plan().get().orElseThrow();
    assertThat(after.load().request().pieces()).hasSize(request.pieces().size() + 3);
    Difference than = Difference.between(before, after);
    assertThat(than.moved() + than.takenOut()).isLessThanOrEqualTo(before.load().placed() / 10);
    model.commands().undo();
    assertThat(model.work().plan().get()).contains(before);
    assertThat(model.steps().lastDone().get()).isEmpty();
  }

  @Test
  void aPlanningShowsItsBestAsItGoesAndIsForgottenWhenAnotherPlanIsOpened() {
    QueuedTaskRunner tasks = new QueuedTaskRunner();
    DeskViewModel slow = model(tasks);
    slow.tryTheDemo();
    tasks.doWork();
    tasks.doSteps();
    assertThat(slow.planning().get()).isTrue();
    assertThat(slow.state().get()).isEqualTo("Planning…");
    tasks.doWork();
    slow.open(DemoPlan.file(folder));
    assertThat(slow.planning().get()).isFalse();
    assertThat(tasks.doSteps())
        .as("one step for all that was better, one for the end")
        .isEqualTo(2);
    assertThat(slow.shown().get()).isEmpty();
    assertThat(slow.state().get()).isEqualTo("Opening demo.plan.json…");
    tasks.doWork();
    tasks.doSteps();
    assertThat(slow.state().get()).endsWith("From demo.plan.json.");
  }
}
