package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.BatchLines;
import shelfful.app.KeepAStudio;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.edit.Edit;
import shelfful.files.WorkWriter;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;
import shelfful.ui.DemoPlan;
import shelfful.ui.DemoStudio;
import shelfful.ui.batches.BatchListViewModel;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.steps.Steps;
import shelfful.ui.studio.Field;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

/** Work by hand, in the studio and in the list, taken back in the order it was done. */
class SharedHistoryTest {
  @TempDir private Path folder;

  private DeskViewModel desk;
  private StudioViewModel studio;
  private BatchListViewModel list;

  @BeforeEach
  void openEverything() {
    desk =
        new DeskViewModel(
            Words.english(),
            new SameThreadTaskRunner(),
            SearchLength.ofSteps(0),
            new RecoveryFolder(folder.resolve("recovery")));
    Manner manner = new Manner(Words.english(), LengthUnit.MILLIMETRES, NumberStyle.DOT);
    studio = new StudioViewModel(manner, DemoStudio.studio(), desk.steps());
    list = new BatchListViewModel(Words.english(), DemoStudio.studio(), desk.steps());
    list.open(Path.of("..", "demo-data", "list-60.csv"));
    desk.open(DemoPlan.file(folder));
  }

  private Placement piece(int at) {
    List<Placement> standing =
        desk.work().plan().get().orElseThrow().load().layers().stream()
            .map(Layer::placements)
            .flatMap(List::stream)
            .toList();
    return standing.get(at % standing.size());
  }

  private void move(int at, int to) {
    String id = piece(at).pieceId();
    desk.work().apply(new Edit.MovePiece(id, Point.ofMillimetres(to, 0), Angle.ZERO));
  }

  private void resize(int height) {
    Field field =
        studio.page().get().stream()
            .flatMap(group -> group.fields().stream())
            .filter(one -> one.label().equals("Height"))
            .findFirst()
            .orElseThrow();
    assertThat(studio.commit(field, Integer.toString(height))).isEmpty();
  }

  private List<Object> all() {
    return List.of(
        text(WorkWriter.bytes(desk.work().plan().get().orElseThrow())),
        text(KeepAStudio.bytes(studio.studio().get())),
        list.lines().stream().map(BatchLines.Line::cells).toList());
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  @Test
  void undoTakesBackTheLastThingDoneAnywhereAndSaysWhich() {
    List<Object> first = all();
    move(0, 5);
    resize(111);
    list.delete(List.of(0));
    assertThat(desk.steps().nameOfLast().getValue()).startsWith("list: ");
    desk.commands().undo();
    assertThat(desk.hand().told().get()).startsWith("Undone: list: ");
    assertThat(desk.steps().nameOfLast().getValue()).isEqualTo("studio: Height of " + form());
    studio.undo();
    assertThat(desk.steps().nameOfLast().getValue()).startsWith("move ");
    list.undo();
    assertThat(all()).isEqualTo(first);
    assertThat(desk.steps().lastDone().get()).isEmpty();
  }

  private String form() {
    return studio.studio().get().forms().get(0).name();
  }

  @Test
  void anotherPlanOnTheDeskLeavesTheStepsOfTheStudioAndTheList() {
    move(0, 5);
    resize(111);
    list.delete(List.of(0));
    desk.open(DemoPlan.file(folder));
    assertThat(desk.steps().done()).extracting(Steps.Step::name).hasSize(2);
    desk.commands().undo();
    desk.commands().undo();
    assertThat(studio.studio().get()).isEqualTo(DemoStudio.studio());
  }

  @Test
  void aPieceInTheHandIsPutBackBeforeAnythingIsTakenBack() {
    resize(111);
    assertThat(desk.hand().takeUp(piece(0).pieceId())).isTrue();
    studio.undo();
    assertThat(desk.hand().held().get()).isEmpty();
    assertThat(studio.studio().get()).isEqualTo(DemoStudio.studio());
    assertThat(desk.steps().done()).isEmpty();
  }

  @Test
  void randomWorkEverywhereIsTakenBackToTheFirstBytesAndDoneAgainToTheLast() {
    SplittableRandom random = new SplittableRandom(20260601);
    for (int script = 0; script < 20; script++) {
      List<Object> first = all();
      int before = desk.steps().done().size();
      for (int i = 0; i < 12; i++) {
        step(random);
      }
      move(0, 1000 + script);
      List<Object> last = all();
      int back = 0;
      while (desk.steps().done().size() > before) {
        desk.steps().undo();
        back++;
      }
      assertThat(all()).as("script " + script).isEqualTo(first);
      for (int i = 0; i < back; i++) {
        desk.steps().redo();
      }
      assertThat(all()).as("script " + script).isEqualTo(last);
    }
  }

  private void step(SplittableRandom random) {
    switch (random.nextInt(6)) {
      case 0 -> move(random.nextInt(1000), random.nextInt(-200, 200));
      case 1 -> resize(random.nextInt(60, 200));
      case 2 -> list.edit(random.nextInt(5), "quantity", Integer.toString(random.nextInt(1, 40)));
      case 3 -> list.duplicate(List.of(random.nextInt(4)));
      case 4 -> desk.commands().pin(piece(random.nextInt(1000)).pieceId());
      default -> desk.commands().lockKiln();
    }
  }
}
