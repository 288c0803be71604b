package shelfful.ui.look;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import shelfful.drawing.PaperSize;
import shelfful.measure.LengthUnit;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

/** The settings, each with its choices; every choice counts at once. */
public final class SettingsPane extends GridPane {
  private final Words words;
  private final SettingsViewModel model;

  /** Shows the settings as they are. */
  public SettingsPane(Words words, SettingsViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("form-grid");
    List<LengthUnit> units = List.of(LengthUnit.values());
    choice("unit", units, Settings::unit, Settings::with, one -> words.of("unit", one));
    List<NumberStyle> styles = List.of(NumberStyle.values());
    choice("numbers", styles, Settings::numbers, Settings::with, one -> words.of("numbers", one));
    List<PaperSize> papers = List.of(PaperSize.values());
    choice("paper", papers, Settings::paper, Settings::with, one -> words.of("paper", one));
    List<Theme> themes = List.of(Theme.values());
    choice("theme", themes, Settings::theme, Settings::with, one -> words.of("theme", one));
    choice("scale", Settings.SCALES, Settings::scale, Settings::with, this::percent);
    List<Language> languages = Language.offered();
    choice(
        "language",
        languages,
        Settings::language,
        Settings::with,
        one -> words.of("language", one));
    Label note = Lines.of(words.of("settings.note"), "quiet");
    add(note, 0, getRowCount(), 2, 1);
    Label trouble = new Label();
    trouble.textProperty().bind(model.trouble());
    trouble.getStyleClass().add("wrong");
    trouble.setWrapText(true);
    add(trouble, 0, getRowCount(), 2, 1);
  }

  private String percent(int scale) {
    return words.of("settings.percent", scale);
  }

  private <T> void choice(
      String key,
      List<T> choices,
      Function<Settings, T> now,
      BiFunction<Settings, T, Settings> with,
      Function<T, String> shown) {
    ComboBox<T> box = new ComboBox<>();
    box.getItems().setAll(choices);
    box.setConverter(new ByWords<>(shown));
    box.setValue(now.apply(model.settings().get()));
    box.setId("settings-" + key);
    box.setMaxWidth(Double.MAX_VALUE);
    box.valueProperty()
        .addListener((property, was, is) -> model.change(before -> with.apply(before, is)));
    Label label = Lines.of(words.of("settings." + key));
    label.setLabelFor(box);
    box.setAccessibleText(label.getText());
    addRow(getRowCount(), label, box);
  }
}
