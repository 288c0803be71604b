package shelfful.ui.lists;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.LoadLists;
import shelfful.ui.look.Em;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What waits, with its reason and one thing that would help. */
public final class WaitingList extends VBox {
  private static final double SIDES = 34;

  /** Its heights under other lists, for a heading in letters of 12 pixels. */
  private static final double LEAST = 162;

  private static final double HIGH = 222;

  private final Words words;
  private final Label heading;
  private final ListView<LoadLists.Waiting> list = new ListView<>();

  /**
   * Shows nothing yet.
   *
   * @param choose is told a piece of the row that is chosen
   * @param putIn is told when a row is to go in: by Enter or a double click
   */
  public WaitingList(Words words, Consumer<String> choose, Runnable putIn) {
    this.words = words;
    getStyleClass().add("waiting-list");
    heading = new Label(words.of("waits.heading"));
    heading.getStyleClass().add("heading");
    heading.setLabelFor(list);
    list.setAccessibleText(words.of("waits.text"));
    list.setPlaceholder(new Label(words.of("waits.empty")));
    list.setCellFactory(view -> new Cell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, was, is) -> {
              if (is != null) {
                choose.accept(is.pieceIds().get(0));
              }
            });
    list.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.INSERT) {
            putIn.run();
            event.consume();
          }
        });
    list.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            putIn.run();
          }
        });
    setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(heading, list);
  }

  /** What it is of, in words. */
  public Label heading() {
    return heading;
  }

  /** Keeps a height of its own among other lists, or takes what there is. */
  public void keepHigh(boolean high) {
    minHeightProperty().unbind();
    prefHeightProperty().unbind();
    if (high) {
      minHeightProperty().bind(Em.of(heading, LEAST));
      prefHeightProperty().bind(Em.of(heading, HIGH));
    } else {
      setMinHeight(0);
      setPrefHeight(USE_COMPUTED_SIZE);
    }
  }

  /** Says under the heading how near the load comes to the most possible, while that is known. */
  public void room(ObservableStringValue said) {
    getChildren().add(1, Lines.following(said));
  }

  /** Adds a button under the list. */
  public void offer(String what, Runnable action) {
    Button button = new Button(what);
    button.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    getChildren().add(button);
  }

  /** Lays out a row that says nothing, so that the first real ones come at once. */
  public void rehearse() {
    list.getItems().setAll(new LoadLists.Waiting(0, "–", "–", "", List.of("")));
  }

  /** Shows what else waits. */
  public void show(List<LoadLists.Waiting> waiting) {
    if (!list.getItems().equals(waiting)) {
      list.getItems().setAll(waiting);
    }
  }

  /** Marks the row of a piece as the chosen one, or none. */
  public void mark(String pieceId) {
    list.getItems().stream()
        .filter(row -> row.pieceIds().contains(pieceId))
        .findFirst()
        .ifPresentOrElse(
            row -> {
              if (!row.equals(list.getSelectionModel().getSelectedItem())) {
                list.getSelectionModel().select(row);
              }
            },
            () -> list.getSelectionModel().clearSelection());
  }

  private final class Cell extends ListCell<LoadLists.Waiting> {
    private final Label what = Lines.of("", "strong");
    private final Label why = Lines.of("");
    private final VBox both = new VBox(what, why);

    Cell() {
      for (Label label : List.of(what, why)) {
        label.maxWidthProperty().bind(list.widthProperty().subtract(SIDES));
      }
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(LoadLists.Waiting waiting, boolean empty) {
      super.updateItem(waiting, empty);
      setGraphic(empty ? null : both);
      setAccessibleText(empty ? null : told(waiting));
      if (!empty) {
        what.setText(words.of("waits.what", waiting.count(), waiting.what()));
        why.setText((waiting.reason() + " " + waiting.mend()).strip());
      }
    }

    private String told(LoadLists.Waiting waiting) {
      return words.of("waits.what", waiting.count(), waiting.what())
          + ": "
          + waiting.reason()
          + " "
          + waiting.mend();
    }
  }
}
