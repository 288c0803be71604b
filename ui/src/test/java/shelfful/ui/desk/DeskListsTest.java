package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.control.TableRow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.SearchLength;
import shelfful.drawing.LayerList;
import shelfful.edit.Edit;
import shelfful.inspect.Finding;
import shelfful.measure.Angle;
import shelfful.ui.DemoPlan;
import shelfful.ui.shelfview.ShelfView;

class DeskListsTest {
  @TempDir private Path folder;

  private OpenDesk desk;

  @BeforeEach
  void openAPlan() {
    desk = OpenDesk.atOnce(SearchLength.ofSteps(0), folder.resolve("recovery"));
    desk.run(() -> desk.model.open(DemoPlan.file(folder)));
  }

  @AfterEach
  void close() {
    if (desk != null) {
      desk.close();
    }
  }

  @Test
  void aProblemOpensItsLayerAndBringsItsPieceToTheMiddleAndThePieceMarksTheProblem() {
    List<LayerList> layers = desk.model.shown().get().orElseThrow().lists().layers();
    LayerList first = layers.get(0);
    String other = first.rows().get(1).pieceId();
    String piece = first.rows().get(0).pieceId();
    desk.run(
        () -> {
          desk.model.work().apply(new Edit.MovePiece(piece, first.rows().get(1).at(), Angle.ZERO));
          desk.model.chooseLayer(layers.get(layers.size() - 1).layerId());
        });
    ListView<?> problems = desk.all(ListView.class).get(0);
    for (int i = 0; i < 12; i++) {
      desk.run(() -> desk.picture().zoomIn());
    }
    desk.run(
        () -> {
          problems.getSelectionModel().select(0);
        });
    assertThat(desk.model.layerId().get()).isEqualTo(first.layerId());
    assertThat(desk.model.pieceId().get()).isIn(piece, other);
    ShelfView view = desk.picture();
    ShelfView.Ring ring =
        desk.model
            .shown()
            .get()
            .orElseThrow()
            .ring(first.layerId(), desk.model.pieceId().get())
            .orElseThrow();
    assertThat(view.viewport().orElseThrow().screenX(ring.at().x()))
        .isCloseTo(view.getWidth() / 2, within(2.0));
    desk.run(
        () -> {
          desk.model.choosePiece("");
        });
    assertThat(problems.getSelectionModel().getSelectedItem()).isNull();
    desk.run(
        () -> {
          desk.model.choosePiece(piece);
        });
    assertThat(((Finding) problems.getSelectionModel().getSelectedItem()).pieceIds())
        .contains(piece);
  }

  @Test
  void everyRowSaysNameSizePlaceAndNeighbourAloud() {
    List<String> told =
        desk.all(TableRow.class).stream()
            .filter(row -> row.isVisible() && !row.isEmpty())
            .map(Node::getAccessibleText)
            .filter(text -> text != null && !text.isEmpty())
            .toList();
    assertThat(told).isNotEmpty();
    LayerList layer =
        desk.model.shown().get().orElseThrow().layer(desk.model.layerId().get()).orElseThrow();
    for (String sentence : told) {
      assertThat(layer.rows())
          .anyMatch(
              row ->
                  sentence.startsWith("Number " + row.number() + ", " + row.form())
                      && sentence.contains(row.place()));
      assertThat(sentence)
          .contains("nearest is number ")
          .containsPattern("[0-9.]+ mm away")
          .containsPattern("[0-9.]+ mm across");
    }
  }
}
