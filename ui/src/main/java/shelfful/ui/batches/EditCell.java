package shelfful.ui.batches;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TableCell;
import javafx.scene.control.TablePosition;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import shelfful.app.BatchLines;

/**
 * A cell that keeps what was typed into it. The table's own editing throws a text away when another
 * cell is clicked or the focus goes elsewhere (JDK-8089514); here leaving by any way but Escape
 * takes the text: Enter, Tab, a click elsewhere, another window. The text goes to the view model by
 * row and heading, and not through the table, which by then may be editing another cell.
 */
final class EditCell extends TableCell<BatchLines.Line, String> {
  private static final String FAULTY = "faulty";

  private final BatchListViewModel model;
  private final String heading;
  private final TextField typed = new TextField();
  private final Tooltip fault = new Tooltip();
  private int row = -1;

  EditCell(BatchListViewModel model, String heading) {
    this.model = model;
    this.heading = heading;
    typed.setAccessibleText(model.words().of("column." + heading));
    typed
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (was && !is) {
                leave();
              }
            });
    typed.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    fault.setWrapText(true);
    fault.setMaxWidth(400);
  }

  private void pressed(KeyEvent event) {
    switch (event.getCode()) {
      case ENTER -> leave();
      case ESCAPE -> {
        row = -1;
        cancelEdit();
      }
      case TAB -> leaveFor(event.isShiftDown() ? -1 : 1);
      case DOWN, F4 -> choose();
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  public void startEdit() {
    super.startEdit();
    if (isEditing()) {
      row = getIndex();
      typed.setText(getItem());
      setText(null);
      setGraphic(typed);
      typed.requestFocus();
      typed.selectAll();
    }
  }

  /** Also called by the table when another cell is to be edited: then the text is taken. */
  @Override
  public void cancelEdit() {
    int edited = row;
    String text = typed.getText();
    row = -1;
    super.cancelEdit();
    setGraphic(null);
    paint();
    if (edited >= 0) {
      model.edit(edited, heading, text);
    }
  }

  /** Takes the text and stops editing. */
  private void leave() {
    if (row >= 0) {
      cancelEdit();
      getTableView().requestFocus();
    }
  }

  private void leaveFor(int step) {
    int next = getTableView().getVisibleLeafIndex(getTableColumn()) + step;
    int at = row;
    leave();
    int columns = getTableView().getVisibleLeafColumns().size();
    int target = Math.floorMod(next, columns);
    int line = at + Math.floorDiv(next, columns);
    if (line >= 0 && line < getTableView().getItems().size()) {
      var column = getTableView().getVisibleLeafColumn(target);
      getTableView().getSelectionModel().clearAndSelect(line, column);
      getTableView().getFocusModel().focus(new TablePosition<>(getTableView(), line, column));
      getTableView().scrollToColumn(column);
      getTableView().edit(line, column);
    }
  }

  private void choose() {
    List<String> choices = CellChoices.of(heading, model.studio());
    if (choices.isEmpty()) {
      return;
    }
    ContextMenu menu = new ContextMenu();
    for (String choice : choices) {
      MenuItem item = new MenuItem(choice.isEmpty() ? model.words().of("batches.nothing") : choice);
      item.setOnAction(event -> typed.setText(choice));
      menu.getItems().add(item);
    }
    menu.show(typed, Side.BOTTOM, 0, 0);
  }

  @Override
  protected void updateItem(String text, boolean empty) {
    super.updateItem(text, empty);
    if (!isEditing()) {
      setGraphic(null);
      paint();
    }
  }

  private void paint() {
    Optional<BatchLines.Fault> wrong =
        isEmpty() || getTableRow() == null
            ? Optional.empty()
            : Optional.ofNullable(getTableRow().getItem()).flatMap(line -> line.fault(heading));
    getStyleClass().remove(FAULTY);
    setTooltip(null);
    String text = isEmpty() || getItem() == null ? "" : getItem();
    setText(text);
    setAccessibleText(
        model.words().of("batches.cell", model.words().of("column." + heading), text));
    wrong.ifPresent(
        one -> {
          getStyleClass().add(FAULTY);
          setText(("! " + text).strip());
          fault.setText((one.wrong() + " " + one.mend()).strip());
          setTooltip(fault);
          setAccessibleText(getAccessibleText() + ". " + fault.getText());
        });
  }

  /** What is being typed. */
  TextField typed() {
    return typed;
  }
}
