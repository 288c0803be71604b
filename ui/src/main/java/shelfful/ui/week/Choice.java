package shelfful.ui.week;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/**
 * A box of choices under its name, one of them always chosen.
 *
 * @param <T> what is chosen from
 */
final class Choice<T> extends VBox {
  private final ComboBox<T> box = new ComboBox<>();

  /**
   * Offers items, the first of them chosen.
   *
   * @param items at least one
   * @param name what people call an item
   */
  Choice(String label, List<T> items, Function<T, String> name) {
    getStyleClass().add("field");
    box.setAccessibleText(label);
    box.setCellFactory(list -> cell(name));
    box.setButtonCell(cell(name));
    getChildren().addAll(new Label(label), box);
    offer(items);
  }

  private ListCell<T> cell(Function<T, String> name) {
    return new ListCell<>() {
      @Override
      protected void updateItem(T item, boolean empty) {
        super.updateItem(item, empty);
        setText(empty || item == null ? "" : name.apply(item));
      }
    };
  }

  /** Offers other items. */
  void offer(List<T> items) {
    box.getItems().setAll(items);
    box.getSelectionModel().selectFirst();
  }

  T chosen() {
    return box.getSelectionModel().getSelectedItem();
  }

  /** Who is told of another choice. */
  void onChange(Consumer<T> taker) {
    box.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, was, is) -> {
              if (is != null) {
                taker.accept(is);
              }
            });
  }
}
