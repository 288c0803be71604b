package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Angle;
import shelfful.measure.Point;

class WorkRoundTripTest {
  private static WorkPlan work() {
    WorkPlan plan = WorkPlan.of(SmallPlan.load());
    String layer = plan.load().layers().get(0).id();
    String piece = plan.load().layers().get(0).placements().get(0).pieceId();
    // At the middle of the chamber other things stand: this breaks rules, and is work all the same.
    WorkPlan moved = new Edit.MovePiece(piece, Point.ORIGIN, Angle.ZERO).on(plan);
    return new Edit.LockLayer(layer, true).on(moved);
  }

  @Test
  void readsBackWhatItWroteWithPinsAndLocksAndFaults() {
    byte[] once = WorkWriter.bytes(work(), Optional.of("/pottery/tuesday.work.json"));
    ReadResult<WorkReader.Work> result = WorkReader.read("work.json", once);
    assertThat(result.problems()).isEmpty();
    assertThat(result.found().orElseThrow().plan()).isEqualTo(work());
    assertThat(result.found().orElseThrow().of()).contains("/pottery/tuesday.work.json");
    assertThat(WorkWriter.bytes(result.found().get().plan(), result.found().get().of()))
        .isEqualTo(once);
  }

  @Test
  void readsAPlanFileAsWorkThatNothingIsPinnedIn() {
    byte[] plan = PlanWriter.bytes(SmallPlan.inspected());
    assertThat(WorkReader.read("plan.json", plan).found().orElseThrow().plan())
        .isEqualTo(WorkPlan.of(SmallPlan.load()));
  }

  @Test
  void refusesAnythingElseByItsNameAndSaysWhatToDo(@TempDir Path folder) {
    ReadResult<WorkReader.Work> studio = WorkReader.read(Path.of("../demo-data/studio.json"));
    assertThat(studio.found()).isEmpty();
    assertThat(studio.problems().get(0).sentence())
        .contains("studio.json")
        .contains("Choose the right file");
    assertThat(WorkReader.read(folder.resolve("none.json")).problems().get(0).sentence())
        .contains("no such file");
  }

  @Test
  void namesAMissingListOfPins() {
    String text = new String(WorkWriter.bytes(work()), StandardCharsets.UTF_8);
    String without = text.replaceFirst("\"pinned\"", "\"pinnd\"");
    ReadResult<WorkReader.Work> result =
        WorkReader.read("work.json", without.getBytes(StandardCharsets.UTF_8));
    assertThat(result.found()).isEmpty();
    assertThat(result.problems()).extracting(Problem::field).contains("pinned");
  }

  @Test
  void refusesTwoLayersOfOneName() {
    List<Layer> layers = new ArrayList<>(work().load().layers());
    Layer first = layers.get(0);
    layers.add(first.holding(List.of()));
    Load load = work().load();
    Load twice =
        new Load(load.request(), load.columnPlanId(), layers, load.posts(), load.leftOut());
    ReadResult<WorkReader.Work> result =
        WorkReader.read("work.json", WorkWriter.bytes(WorkPlan.of(twice)));
    assertThat(result.found()).isEmpty();
    assertThat(result.problems()).hasSize(1);
    assertThat(result.problems().get(0).field()).isEqualTo("layers");
    assertThat(result.problems().get(0).sentence()).contains("\"" + first.id() + "\"");
  }
}
