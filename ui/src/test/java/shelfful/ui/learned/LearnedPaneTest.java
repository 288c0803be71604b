package shelfful.ui.learned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import shelfful.app.MadeUpYear;
import shelfful.measure.LengthUnit;
import shelfful.ui.DemoStudio;
import shelfful.ui.Scenes;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.look.Settings;
import shelfful.ui.steps.Steps;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class LearnedPaneTest {
  private final Words words = Words.english();
  private final Steps steps = new Steps();
  private final StudioViewModel studio =
      new StudioViewModel(
          new Manner(words, LengthUnit.MILLIMETRES, NumberStyle.DOT), DemoStudio.studio(), steps);

  private final StudioDoor door = new OpenStudio(studio);

  private static List<Button> accepts(Scenes window) {
    return window.all(Button.class).stream()
        .filter(button -> String.valueOf(button.getText()).contains("where that costs nothing"))
        .toList();
  }

  @Test
  void whatWasAcceptedAndTakenBackCanBeAcceptedAgain() {
    LearnedViewModel model =
        new LearnedViewModel(
            words,
            new SameThreadTaskRunner(),
            new SimpleObjectProperty<>(MadeUpYear.of(DemoStudio.studio())),
            door);
    try (Scenes window =
        Scenes.open(
            () ->
                new LearnedPane(
                    words,
                    model,
                    new SimpleBooleanProperty(true),
                    () -> new Decimals(NumberStyle.DOT)),
            Settings.usual(Locale.ROOT),
            1200,
            800)) {
      assertThat(accepts(window)).isNotEmpty().noneMatch(Button::isDisabled);
      window.run(accepts(window).get(0)::fire);
      assertThat(accepts(window).get(0).isDisabled()).isTrue();
      window.run(steps::undo);
      assertThat(accepts(window)).noneMatch(Button::isDisabled);
    }
  }
}
