package shelfful.ui.week;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import shelfful.ui.calendar.CalendarView;
import shelfful.ui.words.Words;
import shelfful.week.Hold;

/** What is done most often, as buttons that find room on as many lines as they need. */
final class WeekButtons extends FlowPane {
  private static final int WEEK = 7;

  private final Words words;

  WeekButtons(Words words, WeekViewModel model, CalendarView calendar, WeekPlaces places) {
    this.words = words;
    getStyleClass().add("week-buttons");
    Button freeze = button("week.buttonFreeze", model::freezeOrRelease);
    follow(freeze, model);
    Button again = button("week.buttonAgain", model::planAgain);
    again.getStyleClass().add("main-button");
    Button stop = button("week.buttonStop", model::stop);
    stop.disableProperty().bind(model.planning().not());
    getChildren()
        .addAll(
            again,
            stop,
            resting(button("menu.undo", model::undo), model.steps().nameOfLast()),
            resting(button("menu.redo", model::redo), model.steps().nameOfNext()),
            freeze,
            button("week.buttonOpen", () -> OpenedFiring.of(model).ifPresent(places::onDesk)),
            button("week.buttonDay", () -> calendar.showDays(2)),
            button("week.buttonWeek", () -> calendar.showDays(WEEK)),
            button("week.buttonAll", calendar::fit),
            named(button("sheet.smaller", calendar::zoomOut), "sheet.smallerText"),
            named(button("sheet.larger", calendar::zoomIn), "sheet.largerText"));
  }

  /** Says what it would do to the chosen firing. */
  private void follow(Button freeze, WeekViewModel model) {
    Runnable say =
        () -> {
          boolean free =
              model.chosenFiring().filter(firing -> firing.hold() != Hold.FREE).isEmpty();
          freeze.setText(words.of(free ? "week.buttonFreeze" : "week.buttonRelease"));
        };
    model.chosen().addListener(changed -> say.run());
    model.shown().addListener(changed -> say.run());
  }

  /** The name of the step is read aloud with the button. */
  private Button resting(Button button, ObservableValue<String> step) {
    button.disableProperty().bind(step.map(String::isEmpty));
    String plain = button.getText();
    button.accessibleTextProperty().bind(step.map(name -> (plain + " " + name).strip()));
    return button;
  }

  private Button named(Button button, String key) {
    button.setAccessibleText(words.of(key));
    return button;
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(words.of(key));
    button.setOnAction(event -> action.run());
    return button;
  }
}
