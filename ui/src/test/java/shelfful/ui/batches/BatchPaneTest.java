package shelfful.ui.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.app.BatchLines;
import shelfful.ui.DemoStudio;
import shelfful.ui.Scenes;
import shelfful.ui.look.Settings;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

class BatchPaneTest {
  private static final int QUANTITY = 4;
  private static final int FORM = 2;

  private final Steps steps = new Steps();
  private final List<String> planned = new ArrayList<>();
  private final BatchListViewModel model =
      new BatchListViewModel(Words.english(), DemoStudio.studio(), steps);
  private String clipboard = "";
  private Scenes window;

  @BeforeEach
  void open() {
    model.open(Path.of("..", "demo-data", "list-60.csv"));
    window =
        Scenes.open(
            () ->
                new BatchPane(
                    Words.english(),
                    model,
                    new BatchPane.Surroundings(
                        Optional::empty,
                        Optional::empty,
                        () -> Optional.of(clipboard),
                        ColumnMemory.ofThisRun(),
                        () -> planned.add("planned"))),
            Settings.usual(Locale.ROOT),
            1180,
            700);
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private BatchTable table() {
    return window.all(BatchTable.class).get(0);
  }

  private TableColumn<BatchLines.Line, ?> column(int index) {
    return table().getVisibleLeafColumn(index);
  }

  private void edit(int row, int column) {
    window.run(
        () -> {
          table().requestFocus();
          table().getSelectionModel().clearAndSelect(row, table().getVisibleLeafColumn(column));
          table().edit(row, column(column));
        });
  }

  private TextField typed() {
    return window.all(TextField.class).get(0);
  }

  private void press(Node node, KeyCode code, boolean shift, boolean control) {
    window.run(
        () ->
            node.fireEvent(
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false)));
  }

  private String quantity(int row) {
    return model.lines().get(row).cells().get(3);
  }

  @Test
  void whatIsTypedIsKeptWhenTheFocusGoesElsewhere() {
    edit(0, QUANTITY);
    window.run(() -> typed().setText("7"));
    window.run(() -> button("Add").requestFocus());
    assertThat(quantity(0)).isEqualTo("7");
    assertThat(steps.done()).hasSize(1);
    assertThat(window.all(TextField.class)).isEmpty();
  }

  @Test
  void whatIsTypedIsKeptWhenAnotherCellIsEditedNext() {
    edit(0, QUANTITY);
    window.run(() -> typed().setText("8"));
    edit(2, QUANTITY);
    assertThat(quantity(0)).isEqualTo("8");
    assertThat(table().getEditingCell().getRow()).isEqualTo(2);
    window.run(() -> typed().setText("9"));
    press(typed(), KeyCode.ENTER, false, false);
    assertThat(quantity(2)).isEqualTo("9");
    assertThat(quantity(0)).isEqualTo("8");
  }

  @Test
  void tabTakesTheTextAndEditsTheNextCellAndShiftTabTheOneBefore() {
    edit(1, QUANTITY);
    window.run(() -> typed().setText("5"));
    press(typed(), KeyCode.TAB, false, false);
    assertThat(quantity(1)).isEqualTo("5");
    assertThat(table().getEditingCell().getColumn()).isEqualTo(QUANTITY + 1);
    press(typed(), KeyCode.TAB, true, false);
    assertThat(table().getEditingCell().getColumn()).isEqualTo(QUANTITY);
    assertThat(typed().getText()).isEqualTo("5");
  }

  @Test
  void escapeAloneGivesATextUp() {
    edit(0, QUANTITY);
    String before = quantity(0);
    window.run(() -> typed().setText("777"));
    press(typed(), KeyCode.ESCAPE, false, false);
    assertThat(quantity(0)).isEqualTo(before);
    assertThat(steps.done()).isEmpty();
  }

  @Test
  void aWrongCellIsMarkedAndToldAndCanBeReadAloud() {
    edit(0, FORM);
    window.run(() -> typed().setText("mugg"));
    press(typed(), KeyCode.ENTER, false, false);
    EditCell cell =
        window.all(EditCell.class).stream()
            .filter(one -> one.getStyleClass().contains("faulty"))
            .findFirst()
            .orElseThrow();
    assertThat(cell.getText()).isEqualTo("! mugg");
    assertThat(cell.getAccessibleText()).contains("mugg").contains("Did you mean");
    press(table(), KeyCode.Z, false, true);
    assertThat(window.all(EditCell.class)).noneMatch(one -> one.getStyleClass().contains("faulty"));
  }

  @Test
  void pastingShowsAPreviewAndTakesNothingBeforeItIsConfirmed() {
    int before = model.lines().size();
    clipboard = "form\tquantity\nmug\t3\nmugg\t4\n";
    press(table(), KeyCode.V, false, true);
    assertThat(window.all(PastePane.class)).hasSize(1);
    assertThat(window.silent()).isEmpty();
    window.run(() -> button("Cancel").fire());
    assertThat(model.lines()).hasSize(before);
    assertThat(steps.done()).isEmpty();
    press(table(), KeyCode.V, false, true);
    window.run(() -> button("Add 1 batch").fire());
    assertThat(model.lines()).hasSize(before + 1);
    assertThat(steps.done()).hasSize(1);
    press(table(), KeyCode.Z, false, true);
    assertThat(model.lines()).hasSize(before);
  }

  private Button button(String text) {
    return window.all(Button.class).stream()
        .filter(button -> button.getText().equals(text))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void addBeginsANewRowAndDeleteTakesTheChosenRowsAway() {
    int before = model.lines().size();
    window.run(() -> button("Add").fire());
    assertThat(model.lines()).hasSize(before + 1);
    assertThat(table().getEditingCell().getRow()).isEqualTo(before);
    press(typed(), KeyCode.ESCAPE, false, false);
    press(table(), KeyCode.DELETE, false, false);
    assertThat(model.lines()).hasSize(before);
    window.run(() -> button("Plan this list").fire());
    assertThat(planned).containsExactly("planned");
  }

  @Test
  void everyControlHasANameAndARole() {
    assertThat(window.silent()).isEmpty();
  }
}
