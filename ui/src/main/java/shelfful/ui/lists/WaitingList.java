package shelfful.ui.lists;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.drawing.LoadLists;
import shelfful.ui.words.Words;

/** What waits, with its reason and one thing that would help. */
public final class WaitingList extends VBox {
  private static final double SIDES = 34;

  private final Words words;
  private final ListView<LoadLists.Waiting> list = new ListView<>();

  /** Shows nothing yet. */
  public WaitingList(Words words) {
    this.words = words;
    getStyleClass().add("waiting-list");
    Label heading = new Label(words.of("waits.heading"));
    heading.getStyleClass().add("heading");
    heading.setLabelFor(list);
    list.setAccessibleText(words.of("waits.text"));
    list.setPlaceholder(new Label(words.of("waits.empty")));
    list.setCellFactory(view -> new Cell());
    setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(heading, list);
  }

  /** Shows what else waits. */
  public void show(List<LoadLists.Waiting> waiting) {
    list.getItems().setAll(waiting);
  }

  private final class Cell extends ListCell<LoadLists.Waiting> {
    private final Label what = new Label();
    private final Label why = new Label();
    private final VBox both = new VBox(what, why);

    Cell() {
      what.getStyleClass().add("strong");
      for (Label label : List.of(what, why)) {
        label.setWrapText(true);
        label.maxWidthProperty().bind(list.widthProperty().subtract(SIDES));
        label.setMinHeight(USE_PREF_SIZE);
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
