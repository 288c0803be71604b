package shelfful.ui.studio;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import shelfful.studio.Studio;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Em;
import shelfful.ui.look.Lines;

/**
 * One field with its label and, under it, what is wrong with what was typed. A text is taken when
 * the field is left or Enter is pressed; Escape brings back what is stored.
 */
final class FieldRow {
  private static final String FAULTY = "faulty";
  private static final double WIDE = 225;

  private final StudioViewModel model;
  private final Label label;
  private final Label problem = Lines.of("", "wrong");
  private final Control control;
  private Field field;
  private boolean filling;

  FieldRow(StudioViewModel model, Field field) {
    this.model = model;
    this.field = field;
    this.label = Lines.of(field.label());
    this.control = control(field);
    label.setLabelFor(control);
    control.setAccessibleText(field.label());
    control.setId(field.path());
    control.setMaxWidth(Double.MAX_VALUE);
    say(Optional.empty());
    fill(model.studio().get());
  }

  private Control control(Field kind) {
    return switch (kind.kind()) {
      case TYPED, COLOUR -> typed();
      case CHOSEN -> chosen();
      case TICKED -> ticked();
      case TOLD -> told();
    };
  }

  /** Label, control and problem, one under the other, as wide as a usual value needs. */
  VBox cell() {
    label.prefWidthProperty().bind(Em.of(label, WIDE));
    problem.prefWidthProperty().bind(Em.of(label, WIDE));
    control.minWidthProperty().bind(Em.of(label, WIDE));
    VBox cell = new VBox(label, control, problem);
    cell.getStyleClass().add("field");
    return cell;
  }

  Field field() {
    return field;
  }

  Control control() {
    return control;
  }

  /** Takes over a field of the same looks, with a studio that may be another. */
  void take(Field other, Studio studio) {
    field = other;
    if (!hasPending()) {
      fill(studio);
    }
  }

  /** A text that was refused stays until it is mended, whatever else changes. */
  private boolean hasPending() {
    return control instanceof TextField && problem.isVisible();
  }

  private void fill(Studio studio) {
    filling = true;
    String text = field.shown().apply(studio);
    if (control instanceof TextField typed && !typed.getText().equals(text)) {
      typed.setText(text);
    } else if (control instanceof CheckBox box) {
      box.setSelected(Boolean.parseBoolean(text));
    } else if (control instanceof Label told) {
      told.setText(text);
    } else if (control instanceof ComboBox<?> box) {
      choose(box, text);
    }
    filling = false;
  }

  private void choose(ComboBox<?> box, String value) {
    for (int i = 0; i < field.choices().size(); i++) {
      if (field.choices().get(i).value().equals(value)) {
        box.getSelectionModel().select(i);
      }
    }
  }

  private TextField typed() {
    TextField typed = new TextField();
    typed
        .textProperty()
        .addListener(
            (property, was, is) -> {
              if (!filling) {
                say(model.type(field, is));
              }
            });
    typed
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                commit(typed);
              }
            });
    typed.addEventHandler(KeyEvent.KEY_PRESSED, event -> pressed(typed, event));
    return typed;
  }

  private void pressed(TextField typed, KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER) {
      commit(typed);
      event.consume();
    } else if (event.getCode() == KeyCode.ESCAPE) {
      say(Optional.empty());
      fill(model.studio().get());
      model.type(field, typed.getText());
      event.consume();
    }
  }

  private void commit(TextField typed) {
    say(model.commit(field, typed.getText()));
    if (!problem.isVisible()) {
      fill(model.studio().get());
    }
  }

  private ComboBox<Field.Choice> chosen() {
    ComboBox<Field.Choice> box = new ComboBox<>();
    box.getItems().setAll(field.choices());
    box.setConverter(new ByWords<>(Field.Choice::words));
    ObservableValue<Field.Choice> value = box.valueProperty();
    value.addListener(
        (property, was, is) -> {
          if (!filling && is != null) {
            takeAtOnce(is.value());
          }
        });
    return box;
  }

  private CheckBox ticked() {
    CheckBox box = new CheckBox();
    box.selectedProperty()
        .addListener(
            (property, was, is) -> {
              if (!filling) {
                takeAtOnce(Boolean.toString(is));
              }
            });
    return box;
  }

  /** A choice that is refused goes back to what it was, with the reason beside it. */
  private void takeAtOnce(String value) {
    Optional<String> refusal = model.commit(field, value);
    fill(model.studio().get());
    say(refusal);
  }

  private Label told() {
    Label told = Lines.of("");
    told.prefWidthProperty().bind(Em.of(label, WIDE));
    return told;
  }

  private void say(Optional<String> wrong) {
    problem.setText(wrong.orElse(""));
    problem.setVisible(wrong.isPresent());
    problem.setManaged(wrong.isPresent());
    control.getStyleClass().remove(FAULTY);
    wrong.ifPresent(any -> control.getStyleClass().add(FAULTY));
    control.setAccessibleHelp(wrong.orElse(null));
  }
}
