package shelfful.ui.desk;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Menu;
import javafx.stage.Stage;
import shelfful.app.WeekRecovery;
import shelfful.drawing.Printing;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.week.KeptWeek;
import shelfful.ui.week.OpenedFiring;
import shelfful.ui.week.WeekFileViewModel;
import shelfful.ui.week.WeekViewModel;
import shelfful.ui.week.WeekWindow;
import shelfful.ui.words.Words;

/** The week beside the desk: its window, and its file, which is asked about before it is left. */
final class DeskWeek {
  private static final Duration LENGTH = Duration.ofSeconds(30);

  private final Words words;
  private final Leaving leaving;
  private final WeekRecovery recovery;
  private final KeptWeek kept;
  private final WeekViewModel model;
  private final WeekFileViewModel files;
  private final WeekWindow window;
  private final Leaving.Document document;

  /**
   * Holds no week yet, and its window is not shown.
   *
   * @param onDesk is given firings to show
   */
  DeskWeek(Words words, TaskRunner tasks, Around around, Consumer<OpenedFiring> onDesk) {
    this.words = words;
    leaving = around.leaving();
    SettingsViewModel settings = around.settings();
    model = new WeekViewModel(words, tasks, Optional.of(LENGTH));
    files = new WeekFileViewModel(words, tasks, model, () -> printing(settings));
    recovery = around.recovery();
    kept = new KeptWeek(tasks, recovery, model, files);
    WeekWindow.Doors doors = new WeekWindow.Doors(onDesk, this::mayLeave);
    window = new WeekWindow(words, model, files, settings.settings(), doors);
    window.closeWith(around.owner());
    document =
        new Leaving.Document(
            words.of("leave.week"), files.unsaved()::get, window::save, kept::drop);
    leaving.watch(document);
  }

  /**
   * What the week asks of the program.
   *
   * @param leaving asks before an unsaved week is left behind
   * @param recovery where an unsaved week is kept
   * @param owner the desk's own window, with which that of the week is closed
   */
  record Around(SettingsViewModel settings, Leaving leaving, WeekRecovery recovery, Stage owner) {}

  private static Printing printing(SettingsViewModel settings) {
    Settings now = settings.settings().get();
    return Printing.plain(now.paper(), now.unit());
  }

  private boolean mayLeave() {
    return leaving.mayLeave(document);
  }

  /**
   * Offers the weeks that earlier runs of the program left unsaved, the latest first; nothing is
   * deleted before it is answered.
   */
  void offer(Consumer<Notice> tell) {
    recovery.left().stream().findFirst().ifPresent(left -> offer(left, tell));
  }

  private void offer(WeekRecovery.Left left, Consumer<Notice> tell) {
    tell.accept(
        new Notice(
            words.of("notice.leftWeek", Saving.time(left.saved())),
            List.of(words.of("left.week", left.week().plan().firings().size())),
            List.of(
                new Notice.Choice(words.of("choice.recover"), () -> recover(left, tell)),
                new Notice.Choice(
                    words.of("choice.throwAway"),
                    () -> {
                      recovery.settle(left);
                      offer(tell);
                    }))));
  }

  /** A week that is unsaved already gives way only when it may; what was left stays otherwise. */
  private void recover(WeekRecovery.Left left, Consumer<Notice> tell) {
    if (mayLeave()) {
      window.show();
      kept.recover(left);
      offer(tell);
    }
  }

  /** The week on the screen. */
  WeekViewModel model() {
    return model;
  }

  /** The menu of the desk that opens it. */
  Menu menu() {
    return window.menu();
  }

  /** Shows the window and plans the month that comes with the program, unless a week stays. */
  void planDemo() {
    window.planDemo();
  }
}
