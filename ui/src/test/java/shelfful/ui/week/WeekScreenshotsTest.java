package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import shelfful.drawing.PaperSize;
import shelfful.drawing.Printing;
import shelfful.measure.LengthUnit;
import shelfful.ui.Picture;
import shelfful.ui.Screen;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.look.Theme;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

/** Takes the pictures of the week for the documents; DEVELOPERS.md has the command. */
@Tag("slow")
class WeekScreenshotsTest {
  private static final Path INTO = Path.of(System.getProperty("screenshots", "target/screenshots"));
  private static final Settings SETTINGS = Settings.usual(Locale.ROOT);

  private final Words words = Words.english();
  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();
  private final WeekViewModel model = new WeekViewModel(words, tasks, Optional.empty());
  private final WeekFileViewModel files =
      new WeekFileViewModel(
          words, tasks, model, () -> Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));
  private WeekPane pane;
  private Stage stage;

  @Test
  void takesAPictureOfEveryStateThatTheDocumentsShow() {
    run(this::open);
    run(files::planDemo);
    save("week-month");
    run(() -> pane.calendar().showDays(7));
    save("week-days");
    run(() -> pane.calendar().showDays(3));
    save("week-near");
    run(() -> pane.calendar().showDays(7));
    run(() -> model.chooseAfter(3));
    run(
        () ->
            model
                .carry()
                .carry(model.chosen().get(), "front", LocalDate.of(2026, 6, 4).atTime(9, 0)));
    save("week-carried");
    run(() -> model.carry().putBack());
    run(() -> model.freezeOrRelease());
    run(() -> Look.dress(pane, SETTINGS.with(Theme.DARK)));
    save("week-dark");
    run(() -> Look.dress(pane, SETTINGS.with(200)));
    save("week-200");
    run(() -> Look.dress(pane, SETTINGS));
    run(() -> pane.calendar().fit());
    run(() -> pane.showList(4));
    run(
        () ->
            model
                .whatIf()
                .outOfOrder("front", LocalDate.of(2026, 6, 8), LocalDate.of(2026, 6, 12)));
    save("week-what-if");
    run(() -> stage.close());
    assertThat(Files.exists(INTO.resolve("week-what-if.png"))).isTrue();
  }

  private void open() {
    pane = new WeekPane(words, model, files, new NoWeekFiles(firing -> {}));
    Look.dress(pane, SETTINGS);
    stage = new Stage();
    stage.setScene(new Scene(pane, 1200, 800));
    stage.show();
  }

  private void run(Runnable step) {
    Screen.on(
        () -> {
          step.run();
          return null;
        });
    for (int i = 0; i < 3; i++) {
      Screen.on(
          () -> {
            pane.applyCss();
            pane.layout();
            return null;
          });
    }
  }

  private void save(String name) {
    Picture.save(stage.getScene(), INTO.resolve(name + ".png"));
  }
}
