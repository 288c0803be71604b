package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.SearchLength;
import shelfful.drawing.LayerList;
import shelfful.edit.WorkPlan;
import shelfful.files.WorkWriter;
import shelfful.inspect.Inspector;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.Point;
import shelfful.ui.Screen;
import shelfful.ui.words.Words;

/** An hour's work at the desk, by mouse and by keys alone. */
class PottersHourTest {
  @TempDir private Path folder;

  private OpenDesk desk;

  @BeforeEach
  void planTheDemo() {
    desk = OpenDesk.atOnce(SearchLength.ofSteps(0), folder.resolve("recovery"));
    desk.run(desk.model::tryTheDemo);
    desk.places.work = Optional.of(folder.resolve("monday.work.json"));
  }

  @AfterEach
  void close() {
    if (desk != null) {
      desk.close();
    }
  }

  private WorkPlan plan() {
    return desk.model.work().plan().get().orElseThrow();
  }

  private byte[] bytes() {
    return WorkWriter.bytes(plan());
  }

  /** A layer with a good many pieces, and one of them. */
  private Placement somePiece() {
    Layer fullest =
        plan().load().layers().stream()
            .max((a, b) -> Integer.compare(a.placements().size(), b.placements().size()))
            .orElseThrow();
    desk.run(() -> desk.model.chooseLayer(fullest.id()));
    return fullest.placements().get(fullest.placements().size() / 2);
  }

  private boolean isSound() {
    return new Inspector().judge(plan().load()).orElseThrow().faults().isEmpty();
  }

  @Test
  void byMouse() throws IOException {
    byte[] first = bytes();
    Placement piece = somePiece();
    double[] at = desk.pixel(piece.at());

    desk.press(at[0], at[1]);
    desk.drag(at[0] + 3, at[1] + 3, false);
    desk.drag(at[0] + 5, at[1] + 4, false);
    assertThat(desk.model.hand().held().get()).isPresent();
    assertThat(desk.model.hand().told().get()).containsPattern("\\d mm");
    assertThat(desk.place(piece.pieceId()))
        .as("nothing changes before it is set down")
        .isEqualTo(piece);
    desk.release(at[0] + 5, at[1] + 4);
    Placement moved = desk.place(piece.pieceId());
    assertThat(moved.at()).isNotEqualTo(piece.at());
    assertThat(plan().isPinned(piece.pieceId())).isTrue();
    assertThat(isSound()).as("it was drawn to where it may stand").isTrue();

    desk.run(desk.model::planAgain);
    assertThat(desk.place(piece.pieceId())).isEqualTo(moved);

    byte[] last = bytes();
    int steps = 0;
    while (desk.model.work().lastDone().get().isPresent()) {
      desk.run(desk.model.commands()::undo);
      steps++;
    }
    assertThat(steps).isPositive();
    assertThat(bytes()).isEqualTo(first);
    for (int i = 0; i < steps; i++) {
      desk.run(desk.model.commands()::redo);
    }
    assertThat(bytes()).isEqualTo(last);

    desk.run(() -> new Saving(Words.english(), desk.model, desk.places).save());
    assertThat(Files.readAllBytes(desk.places.work.orElseThrow())).isEqualTo(last);
    assertThat(desk.model.work().unsaved().get()).isFalse();
  }

  @Test
  void draggingIntoAForbiddenPlaceIsToldKeptAsADraftAndNotPrinted() {
    Placement piece = somePiece();
    Placement other = plan().layerOf(piece.pieceId()).orElseThrow().placements().get(0);
    double[] from = desk.pixel(piece.at());
    double[] to = desk.pixel(other.at());
    desk.press(from[0], from[1]);
    desk.drag(from[0] + 5, from[1], true);
    desk.drag(to[0], to[1], true);
    assertThat(desk.model.hand().held().get().orElseThrow().isForbidden()).isTrue();
    assertThat(desk.model.hand().held().get().orElseThrow().figure()).startsWith("−");
    assertThat(desk.model.hand().told().get()).contains("✕").contains("short");
    desk.release(to[0], to[1]);
    assertThat(isSound()).isFalse();
    assertThat(desk.model.state().get()).contains("not as the rules ask");
    desk.places.sheets = Optional.of(folder.resolve("sheets.pdf"));
    desk.places.plan = Optional.of(folder.resolve("out.plan.json"));
    Saving saving = new Saving(Words.english(), desk.model, desk.places);
    desk.run(saving::print);
    desk.run(saving::savePlan);
    assertThat(folder.resolve("sheets.pdf")).doesNotExist();
    assertThat(folder.resolve("out.plan.json")).doesNotExist();
    assertThat(desk.model.messages().notice().get().orElseThrow().sentences()).isNotEmpty();
    desk.run(saving::save);
    assertThat(desk.places.work.orElseThrow()).exists();
    desk.run(desk.model.commands()::undo);
    desk.run(saving::print);
    assertThat(folder.resolve("sheets.pdf")).exists();
    assertThat(desk.places.shown).containsExactly(folder.resolve("sheets.pdf"));
  }

  @Test
  void escapePutsAPieceBackAndAClickAndAClickCarryItToo() {
    Placement piece = somePiece();
    double[] at = desk.pixel(piece.at());
    byte[] before = bytes();
    desk.press(at[0], at[1]);
    desk.drag(at[0] + 40, at[1], false);
    desk.key(KeyCode.ESCAPE);
    assertThat(desk.model.hand().held().get()).isEmpty();
    desk.drag(at[0] + 60, at[1], false);
    desk.release(at[0] + 60, at[1]);
    assertThat(bytes()).as("after Esc").isEqualTo(before);

    desk.click(at[0], at[1], 1);
    assertThat(desk.model.pieceId().get()).isEqualTo(piece.pieceId());
    desk.click(at[0], at[1], 2);
    desk.move(at[0] + 4, at[1] + 4);
    assertThat(desk.model.hand().held().get()).isPresent();
    desk.click(at[0] + 4, at[1] + 4, 1);
    assertThat(desk.model.hand().held().get()).isEmpty();
    assertThat(desk.place(piece.pieceId()).at()).isNotEqualTo(piece.at());
  }

  @Test
  void byKeysAlone() throws IOException {
    byte[] first = bytes();
    Placement piece = somePiece();
    focusThePicture();
    desk.run(() -> desk.model.choosePiece(piece.pieceId()));

    desk.key(KeyCode.RIGHT);
    desk.key(KeyCode.UP);
    desk.key(KeyCode.UP);
    desk.key(KeyCode.ENTER);
    Point moved = desk.place(piece.pieceId()).at();
    assertThat(moved.x().minus(piece.at().x()).micrometres()).isEqualTo(1000);
    assertThat(moved.y().minus(piece.at().y()).micrometres()).isEqualTo(2000);
    assertThat(plan().isPinned(piece.pieceId())).isTrue();

    desk.key(KeyCode.LEFT, true, false);
    desk.key(KeyCode.ESCAPE);
    assertThat(desk.place(piece.pieceId()).at()).isEqualTo(moved);

    desk.key(KeyCode.P);
    assertThat(plan().isPinned(piece.pieceId())).isFalse();
    desk.key(KeyCode.P);

    String layer = desk.model.layerId().get();
    desk.key(KeyCode.L);
    assertThat(plan().isLocked(layer)).isTrue();
    desk.key(KeyCode.RIGHT);
    assertThat(desk.model.hand().told().get()).contains("locked");
    desk.key(KeyCode.L);

    desk.key(KeyCode.DELETE);
    assertThat(plan().waiting(piece.pieceId())).isPresent();
    desk.key(KeyCode.INSERT);
    assertThat(desk.model.hand().held().get()).isPresent();
    assertThat(desk.model.hand().held().get().orElseThrow().isForbidden()).isFalse();
    desk.key(KeyCode.ENTER);
    assertThat(plan().layerOf(piece.pieceId()).map(Layer::id)).contains(layer);
    assertThat(isSound()).isTrue();

    desk.key(KeyCode.OPEN_BRACKET);
    desk.key(KeyCode.ENTER);
    desk.key(KeyCode.PAGE_UP);
    desk.key(KeyCode.PAGE_DOWN);
    desk.key(KeyCode.ENTER);

    while (desk.model.work().lastDone().get().isPresent()) {
      accelerate(KeyCode.Z, false);
    }
    assertThat(bytes()).isEqualTo(first);
    accelerate(KeyCode.Z, true);
    assertThat(bytes()).isNotEqualTo(first);
    accelerate(KeyCode.S, false);
    assertThat(Files.readAllBytes(desk.places.work.orElseThrow())).isEqualTo(bytes());
  }

  /** The focus goes from control to control by Tab until it is on the picture. */
  private void focusThePicture() {
    List<Node> stops = new ArrayList<>(desk.all(Node.class));
    assertThat(stops.stream().filter(Node::isFocusTraversable)).contains(desk.picture());
    desk.run(() -> desk.picture().requestFocus());
  }

  /** A key of the menu. */
  private void accelerate(KeyCode code, boolean shift) {
    Runnable action =
        Screen.on(
            () ->
                desk.stage.getScene().getAccelerators().entrySet().stream()
                    .filter(
                        entry ->
                            entry
                                .getKey()
                                .match(
                                    new KeyEvent(
                                        KeyEvent.KEY_PRESSED,
                                        "",
                                        "",
                                        code,
                                        shift,
                                        true,
                                        false,
                                        false)))
                    .findFirst()
                    .orElseThrow()
                    .getValue());
    desk.run(action);
  }

  @Test
  void everyFigureInTheListAndOnThePictureIsOfTheSamePiece() {
    somePiece();
    LayerList layer =
        desk.model.shown().get().orElseThrow().layer(desk.model.layerId().get()).orElseThrow();
    for (LayerList.Row row : layer.rows()) {
      desk.run(() -> desk.model.choosePiece(row.pieceId()));
      assertThat(desk.model.shown().get().orElseThrow().nameOf(row.pieceId()))
          .contains(row.number() + " " + row.form());
    }
  }
}
