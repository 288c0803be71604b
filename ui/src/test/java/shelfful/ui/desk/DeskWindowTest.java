package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.drawing.LayerList;
import shelfful.ui.DemoPlan;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.lists.PieceRow;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class DeskWindowTest {
  @TempDir private static Path folder;

  private final DeskViewModel model =
      new DeskViewModel(
          Words.english(),
          new SameThreadTaskRunner(),
          SearchLength.ofSteps(0),
          new RecoveryFolder(folder.resolve("recovery")));
  private DeskWindow window;
  private Stage stage;

  @BeforeEach
  void openTheWindowOnAPlan() {
    Screen.on(
        () -> {
          window = new DeskWindow(Words.english(), model, new SetPlaces());
          stage = new Stage();
          stage.setScene(new Scene(window, 1180, 760));
          stage.show();
          model.open(DemoPlan.file(folder));
          return null;
        });
    settle();
  }

  @AfterEach
  void closeTheWindow() {
    if (stage != null) {
      Screen.on(
          () -> {
            stage.close();
            return null;
          });
    }
  }

  private void settle() {
    Screen.on(
        () -> {
          window.applyCss();
          window.layout();
          return null;
        });
  }

  private <N extends Node> N one(Class<N> type) {
    return all(type).get(0);
  }

  private <N extends Node> List<N> all(Class<N> type) {
    return Scenes.all(window, type);
  }

  private WritableImage picture() {
    return Screen.on(() -> one(ShelfView.class).snapshot(null, null));
  }

  private static boolean differ(WritableImage one, WritableImage other) {
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        if (one.getPixelReader().getArgb(x, y) != other.getPixelReader().getArgb(x, y)) {
          return true;
        }
      }
    }
    return false;
  }

  private void press(KeyCode code, String character) {
    Screen.on(
        () -> {
          ShelfView view = one(ShelfView.class);
          view.fireEvent(
              new KeyEvent(
                  KeyEvent.KEY_PRESSED, character, character, code, false, false, false, false));
          return null;
        });
  }

  @Test
  void everyLayerHasAButtonInTheKilnAndChoosingOneShowsItsSheetAndItsList() {
    List<ToggleButton> buttons = all(ToggleButton.class);
    assertThat(buttons)
        .extracting(ToggleButton::getText)
        .containsExactlyInAnyOrderElementsOf(
            model.shown().get().orElseThrow().lists().layers().stream()
                .map(LayerList::layerId)
                .toList());
    for (ToggleButton button : buttons) {
      WritableImage before = picture();
      boolean chosen = button.isSelected();
      Screen.on(
          () -> {
            button.fire();
            return null;
          });
      settle();
      LayerList layer =
          model.shown().get().flatMap(load -> load.layer(button.getText())).orElseThrow();
      assertThat(model.layerId().get()).isEqualTo(button.getText());
      assertThat(button.isSelected()).isTrue();
      TableView<?> table = one(TableView.class);
      assertThat(table.getItems().stream().map(PieceRow.class::cast).map(PieceRow::piece).toList())
          .isEqualTo(layer.rows());
      assertThat(one(ShelfView.class).getAccessibleText())
          .contains(layer.layerId())
          .contains(layer.rows().size() + " pieces");
      assertThat(differ(before, picture())).isEqualTo(!chosen);
    }
  }

  @Test
  void choosingARowPointsThePieceOutOnTheSheet() {
    WritableImage before = picture();
    Screen.on(
        () -> {
          one(TableView.class).getSelectionModel().select(0);
          return null;
        });
    LayerList.Row first =
        model.shown().get().orElseThrow().layer(model.layerId().get()).orElseThrow().rows().get(0);
    assertThat(model.pieceId().get()).isEqualTo(first.pieceId());
    assertThat(differ(before, picture())).isTrue();
    Screen.on(
        () -> {
          model.choosePiece("");
          return null;
        });
    assertThat(one(TableView.class).getSelectionModel().getSelectedItem()).isNull();
    assertThat(differ(before, picture())).isFalse();
  }

  @Test
  void plusAndMinusZoomNoughtFitsAndTheCanvasStaysAsLargeAsItsView() {
    ShelfView view = one(ShelfView.class);
    double fitted = view.viewport().orElseThrow().scale();
    for (int i = 0; i < 20; i++) {
      press(KeyCode.PLUS, "+");
    }
    settle();
    assertThat(view.viewport().orElseThrow().scale()).isGreaterThan(10 * fitted);
    assertThat(all(Canvas.class))
        .allSatisfy(
            canvas -> {
              assertThat(canvas.getWidth()).isLessThanOrEqualTo(1180);
              assertThat(canvas.getHeight()).isLessThanOrEqualTo(760);
            });
    press(KeyCode.MINUS, "-");
    assertThat(view.viewport().orElseThrow().scale()).isLessThan(16 * fitted);
    press(KeyCode.DIGIT0, "0");
    assertThat(view.viewport().orElseThrow().scale()).isEqualTo(fitted);
  }

  @Test
  void theWheelZoomsWithControlAndMovesThePaperWithout() {
    ShelfView view = one(ShelfView.class);
    double fitted = view.viewport().orElseThrow().scale();
    wheel(view, 40, true);
    double nearer = view.viewport().orElseThrow().scale();
    assertThat(nearer).isGreaterThan(fitted);
    double top = view.viewport().orElseThrow().top();
    wheel(view, -40, false);
    assertThat(view.viewport().orElseThrow().scale()).isEqualTo(nearer);
    assertThat(view.viewport().orElseThrow().top()).isGreaterThan(top);
  }

  private static void wheel(ShelfView view, double by, boolean control) {
    Screen.on(
        () -> {
          view.fireEvent(
              new ScrollEvent(
                  ScrollEvent.SCROLL,
                  200,
                  200,
                  200,
                  200,
                  false,
                  control,
                  false,
                  false,
                  false,
                  false,
                  0,
                  by,
                  0,
                  by,
                  ScrollEvent.HorizontalTextScrollUnits.NONE,
                  0,
                  ScrollEvent.VerticalTextScrollUnits.NONE,
                  0,
                  0,
                  null));
          return null;
        });
  }

  @Test
  void everythingThatTakesTheFocusCanBeReadAloud() {
    List<Node> silent =
        all(Node.class).stream()
            .filter(Node::isFocusTraversable)
            .filter(node -> said(node).isBlank())
            .toList();
    assertThat(silent).isEmpty();
    assertThat(all(ListView.class)).as("what waits, and what to look at").hasSize(2);
  }

  private static String said(Node node) {
    String text = node instanceof Labeled labeled ? labeled.getText() : "";
    return node.getAccessibleText() == null ? String.valueOf(text) : node.getAccessibleText();
  }

  @Test
  void noWordsOfTheWindowAreCutShort() {
    List<String> cut =
        all(Labeled.class).stream()
            .filter(Labeled::isVisible)
            .filter(labeled -> !labeled.isWrapText() && labeled.getWidth() > 0)
            .filter(labeled -> labeled.prefWidth(-1) > labeled.getWidth() + 1)
            .map(Labeled::getText)
            .toList();
    assertThat(cut).isEmpty();
  }

  @Test
  void aPlanThatIsRefusedIsToldInTheWindow() {
    Screen.on(
        () -> {
          model.open(folder.resolve("not-there.json"));
          return null;
        });
    settle();
    assertThat(all(Labeled.class))
        .extracting(Labeled::getText)
        .anyMatch(text -> text != null && text.contains("not-there.json"));
  }
}
