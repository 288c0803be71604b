package shelfful.ui.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.drawing.Sheet;
import shelfful.measure.LengthUnit;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.Scenes;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.look.Settings;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

class StudioPaneTest {
  private static final String HEIGHT = "/forms/0/height";

  private final Studio demo = DemoStudio.studio();
  private final Steps steps = new Steps();
  private final StudioViewModel model =
      new StudioViewModel(
          new Manner(Words.english(), LengthUnit.MILLIMETRES, NumberStyle.DOT), demo, steps);
  private Scenes window;

  @BeforeEach
  void open() {
    window =
        Scenes.open(
            () ->
                new StudioPane(
                    Words.english(), model, new StudioPane.Files(Optional::empty, Optional::empty)),
            Settings.usual(Locale.ROOT),
            1080,
            760);
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private TextField field(String path) {
    return window.called(path, TextField.class);
  }

  private void type(String path, String text) {
    window.run(
        () -> {
          field(path).requestFocus();
          field(path).setText(text);
        });
  }

  private void press(String path, KeyCode code) {
    window.run(
        () ->
            field(path)
                .fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
  }

  private Sheet picture() {
    return window.all(PictureView.class).get(0).picture().orElseThrow();
  }

  private List<String> told() {
    return window.all(Labeled.class).stream()
        .filter(label -> label.isVisible() && label.getStyleClass().contains("wrong"))
        .map(Labeled::getText)
        .toList();
  }

  @Test
  void theDrawingFollowsEveryLetterAndTheStudioFollowsWhenTheFieldIsLeft() {
    Sheet before = picture();
    type(HEIGHT, "140");
    assertThat(picture()).isNotEqualTo(before);
    assertThat(model.studio().get()).isEqualTo(demo);
    window.run(() -> field("/forms/0/name").requestFocus());
    assertThat(model.studio().get().forms().get(0).profile().height().millimetres()).isEqualTo(140);
    assertThat(field(HEIGHT).getText()).isEqualTo("140 mm");
    assertThat(field("/forms/0/name").isFocused()).as("the controls stay").isTrue();
    assertThat(steps.done()).hasSize(1);
  }

  @Test
  void aWrongTextStaysWithTheReasonUnderItUntilItIsMendedOrGivenUp() {
    type(HEIGHT, "tall");
    assertThat(told()).hasSize(1).first().asString().contains("tall");
    assertThat(field(HEIGHT).getStyleClass()).contains("faulty");
    window.run(() -> field("/forms/0/name").requestFocus());
    assertThat(field(HEIGHT).getText()).isEqualTo("tall");
    assertThat(model.studio().get()).isEqualTo(demo);
    type("/forms/0/name", "Big mug");
    press("/forms/0/name", KeyCode.ENTER);
    assertThat(field(HEIGHT).getText()).as("another change leaves it alone").isEqualTo("tall");
    press(HEIGHT, KeyCode.ESCAPE);
    assertThat(told()).isEmpty();
    assertThat(field(HEIGHT).getText()).endsWith(" mm");
    assertThat(model.studio().get().forms().get(0).name()).isEqualTo("Big mug");
  }

  @Test
  void enterTakesATextAndUndoBringsTheOldOneBack() {
    String before = field(HEIGHT).getText();
    type(HEIGHT, "4 in");
    press(HEIGHT, KeyCode.ENTER);
    assertThat(field(HEIGHT).getText()).isEqualTo("101.6 mm");
    window.run(model::undo);
    assertThat(field(HEIGHT).getText()).isEqualTo(before);
  }

  @Test
  void theUnitTurnsEveryFigureAtOnce() {
    window.run(() -> model.use(new Manner(Words.english(), LengthUnit.INCHES, NumberStyle.DOT)));
    assertThat(field(HEIGHT).getText()).endsWith(" in");
    window.run(
        () -> model.use(new Manner(Words.english(), LengthUnit.CENTIMETRES, NumberStyle.COMMA)));
    assertThat(field(HEIGHT).getText()).endsWith(" cm").doesNotContain(".");
    assertThat(steps.done()).isEmpty();
  }

  @Test
  void aBandIsAddedByItsButtonAndItsFieldsAppear() {
    window.run(
        () ->
            window.all(Button.class).stream()
                .filter(button -> button.getText().equals("Add a band"))
                .findFirst()
                .orElseThrow()
                .fire());
    assertThat(field("/forms/0/bands/0/to").getText()).endsWith(" mm");
    assertThat(window.all(Labeled.class))
        .extracting(Labeled::getText)
        .contains("Band 2, counted from the shelf");
  }

  @Test
  void aChoiceThatIsRefusedGoesBackWithTheReason() {
    window.run(() -> model.choose(Section.KILNS));
    ComboBox<?> shape = window.called("/kilns/0/chamber", ComboBox.class);
    String before = String.valueOf(shape.getValue());
    TextField size = field("/kilns/0/chamber/acrossFlats");
    window.run(
        () -> {
          size.requestFocus();
          size.setText("300");
        });
    assertThat(told()).hasSize(1).first().asString().isNotBlank();
    window.run(() -> shape.requestFocus());
    assertThat(model.studio().get()).isEqualTo(demo);
    assertThat(String.valueOf(shape.getValue())).isEqualTo(before);
  }

  @Test
  void everySectionHasItsThingsAndEveryControlANameAndARole() {
    for (Section section : Section.values()) {
      window.run(() -> model.choose(section));
      ListView<?> things = window.called("studio-things", ListView.class);
      assertThat(things.getItems()).hasToString(model.names().toString());
      for (int i = 0; i < model.names().size(); i++) {
        int index = i;
        window.run(() -> model.choose(index));
        assertThat(window.silent()).as(section + " " + i).isEmpty();
        assertThat(told()).isEmpty();
      }
    }
  }
}
