package shelfful.ui.lists;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.inspect.Finding;
import shelfful.ui.look.Em;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What the judge found in a plan that is being worked on; choosing a row chooses its piece. */
public final class ProblemList extends VBox {
  private static final double SIDES = 34;

  /** Its heights over other lists, for a heading in letters of 12 pixels. */
  private static final double LEAST = 103;

  private static final double HIGH = 128;

  private final Words words;
  private final Label heading = new Label();
  private final ListView<Finding> list = new ListView<>();

  /**
   * Shows nothing yet.
   *
   * @param choose is told the problem that is chosen
   */
  public ProblemList(Words words, Consumer<Finding> choose) {
    this.words = words;
    getStyleClass().addAll("waiting-list", "problem-list");
    heading.getStyleClass().add("heading");
    heading.setLabelFor(list);
    list.setAccessibleText(words.of("problems.text"));
    list.setCellFactory(view -> new Cell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, was, is) -> {
              if (is != null) {
                choose.accept(is);
              }
            });
    getChildren().addAll(heading, list);
    show(List.of());
  }

  /** How many there are, in words. */
  public Label heading() {
    return heading;
  }

  /** Keeps a height of its own among other lists, or takes what there is. */
  public void keepHigh(boolean high) {
    minHeightProperty().unbind();
    list.prefHeightProperty().unbind();
    setVgrow(list, high ? Priority.NEVER : Priority.ALWAYS);
    if (high) {
      minHeightProperty().bind(Em.of(heading, LEAST));
      list.prefHeightProperty().bind(Em.of(heading, HIGH));
    } else {
      setMinHeight(0);
      list.setPrefHeight(USE_COMPUTED_SIZE);
    }
  }

  /** Shows what was found; without anything it takes no room. */
  public void show(List<Finding> findings) {
    heading.setText(words.of("problems.heading", findings.size()));
    list.getItems().setAll(findings);
    setVisible(!findings.isEmpty());
    setManaged(!findings.isEmpty());
  }

  /** Marks the first problem of a piece as the chosen one, or none. */
  public void mark(String pieceId) {
    Finding chosen = list.getSelectionModel().getSelectedItem();
    if (chosen != null && chosen.pieceIds().contains(pieceId)) {
      return;
    }
    list.getItems().stream()
        .filter(row -> row.pieceIds().contains(pieceId))
        .findFirst()
        .ifPresentOrElse(
            row -> list.getSelectionModel().select(row),
            () -> list.getSelectionModel().clearSelection());
  }

  private final class Cell extends ListCell<Finding> {
    private final Label sentence = Lines.of("");

    Cell() {
      sentence.maxWidthProperty().bind(list.widthProperty().subtract(SIDES));
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(Finding finding, boolean empty) {
      super.updateItem(finding, empty);
      setGraphic(empty ? null : sentence);
      if (!empty) {
        boolean breaks = finding.severity() == Finding.Severity.BREAKS;
        sentence.setText(
            words.of(breaks ? "problems.breaks" : "problems.wish", finding.sentence()));
        setAccessibleText(sentence.getText());
      }
    }
  }
}
