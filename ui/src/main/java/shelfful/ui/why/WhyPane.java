package shelfful.ui.why;

import java.util.List;
import javafx.beans.value.ObservableStringValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What waits at the left; at the right, why the chosen batch does and what would bring it in. */
public final class WhyPane extends BorderPane {
  private final Words words;
  private final WhyViewModel model;
  private final RemedyCards cards;
  private final ListView<WaitingRow> list = new ListView<>();
  private final VBox details = new VBox();

  /**
   * Shows what the view model holds.
   *
   * @param cards makes what is shown of a batch
   * @param room how near the load comes to the most possible; empty text while that is not known
   */
  public WhyPane(Words words, WhyViewModel model, RemedyCards cards, ObservableStringValue room) {
    this.words = words;
    this.model = model;
    this.cards = cards;
    getStyleClass().add("why-pane");
    setTop(
        new VBox(
            bar(), Lines.following(room, "told", "strong"), Lines.following(model.told(), "told")));
    ScrollPane scroll = new ScrollPane(details);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    details.getStyleClass().add("page");
    SplitPane split = new SplitPane(side(), scroll);
    split.setDividerPositions(0.4);
    setCenter(split);
    model.rows().addListener((ListChangeListener<WaitingRow>) change -> follow(change.getList()));
    follow(model.rows());
  }

  private FileBar bar() {
    Button search = FileBar.button(words, "why.search", () -> model.search(false));
    search.getStyleClass().add("main-button");
    search.disableProperty().bind(model.searching());
    Button every = FileBar.button(words, "why.searchEvery", this::searchEvery);
    every.disableProperty().bind(model.searching());
    Button stop = FileBar.button(words, "why.stop", model::stop);
    stop.disableProperty().bind(model.searching().not());
    return new FileBar(words).with(search).with(every).with(stop);
  }

  /** For the chosen batch alone, because every kind takes long. */
  private void searchEvery() {
    WaitingRow chosen = list.getSelectionModel().getSelectedItem();
    if (chosen != null) {
      model.search(List.of(chosen), true);
    }
  }

  private VBox side() {
    list.setAccessibleText(words.of("why.list"));
    list.setPlaceholder(Lines.of(words.of("waits.empty")));
    list.setCellFactory(view -> new WaitingCell(list, cards));
    list.getSelectionModel().selectedItemProperty().addListener((property, was, is) -> show());
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox side = new VBox(list);
    side.getStyleClass().add("list-side");
    return side;
  }

  private void follow(List<? extends WaitingRow> rows) {
    int chosen = Math.max(0, list.getSelectionModel().getSelectedIndex());
    list.getItems().setAll(rows);
    if (!rows.isEmpty()) {
      list.getSelectionModel().select(Math.min(chosen, rows.size() - 1));
    }
    show();
  }

  private void show() {
    WaitingRow row = list.getSelectionModel().getSelectedItem();
    details.getChildren().setAll(row == null ? List.of() : cards.of(row));
  }
}
