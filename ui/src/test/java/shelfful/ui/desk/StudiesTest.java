package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.SearchLength;
import shelfful.files.PlanWriter;
import shelfful.load.Load;
import shelfful.ui.DemoPlan;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.SmallPlan;
import shelfful.ui.firings.UnpackedRow;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

class StudiesTest {
  private final SettingsViewModel settings = SettingsViewModel.of(Settings.usual(Locale.ROOT));
  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();
  private OpenDesk desk;
  private Studies studies;

  @TempDir private Path folder;

  @BeforeEach
  void open() throws IOException {
    Files.writeString(
        folder.resolve("firings-folder.txt"),
        folder.resolve("firings").toString(),
        StandardCharsets.UTF_8);
    desk = OpenDesk.open(tasks, SearchLength.ofSteps(0), folder.resolve("recovery"));
    openStudies(new SameThreadTaskRunner());
  }

  private void openStudies(TaskRunner runner) {
    desk.run(
        () -> {
          Workshop workshop =
              new Workshop(
                  Words.english(),
                  desk.model,
                  new Workshop.Around(settings, desk.window.leaving(), folder),
                  desk.stage);
          studies =
              new Studies(
                  Words.english(),
                  desk.model,
                  new Studies.Around(settings, workshop.studio(), runner, desk.stage, folder));
        });
  }

  @AfterEach
  void close() {
    if (desk != null) {
      desk.close();
    }
  }

  private void choose(String key) {
    desk.run(
        () -> {
          Menu menu = studies.menu();
          menu.getItems().stream()
              .filter(item -> Words.english().of(key).equals(item.getText()))
              .findFirst()
              .orElseThrow()
              .getOnAction()
              .handle(null);
        });
  }

  private Stage window(String title) {
    return studies.window(title).orElseThrow();
  }

  private <N extends Node> List<N> all(String title, Class<N> type) {
    return Screen.on(
        () -> {
          Scene scene = window(title).getScene();
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          return Scenes.all(scene.getRoot(), type);
        });
  }

  private void press(String title, String text) {
    Button button =
        all(title, Button.class).stream()
            .filter(one -> one.getText().equals(text))
            .findFirst()
            .orElseThrow();
    desk.run(button::fire);
  }

  /** Every word in a window, to be told when something is missing there. */
  private List<String> said(String title) {
    return all(title, Label.class).stream().map(label -> String.valueOf(label.getText())).toList();
  }

  private void openSmallPlan() {
    Path file = DemoPlan.write(folder.resolve("small.plan.json"), plan());
    desk.run(() -> desk.model.open(file));
  }

  private static byte[] plan() {
    return PlanWriter.bytes(SmallPlan.load());
  }

  private Load onDesk() {
    return desk.model.work().plan().get().orElseThrow().load();
  }

  @Test
  void aRemedyIsOneStepThatUndoTakesBack() {
    openSmallPlan();
    Load before = onDesk();
    choose("studies.why");
    press("why.title", Words.english().of("why.search"));
    Button remedy =
        all("why.title", Button.class).stream()
            .filter(one -> one.getAccessibleText() != null)
            .filter(one -> one.getAccessibleText().startsWith(one.getText() + ": "))
            .findFirst()
            .orElseThrow(() -> new AssertionError(said("why.title")));
    desk.run(remedy::fire);
    assertThat(onDesk()).isNotEqualTo(before);
    assertThat(desk.model.steps().done()).hasSize(1);
    desk.run(() -> desk.model.steps().undo());
    assertThat(onDesk()).isEqualTo(before);
  }

  @Test
  void thePlanOnTheDeskBecomesAFiringThatIsMarkedByKeys() {
    openSmallPlan();
    choose("studies.record");
    TableView<?> table = all("firings.title", TableView.class).stream().findFirst().orElseThrow();
    desk.run(
        () -> {
          table.getSelectionModel().select(0);
          table.requestFocus();
        });
    desk.run(
        () ->
            Event.fireEvent(
                table,
                new KeyEvent(
                    KeyEvent.KEY_TYPED, "s", "s", KeyCode.UNDEFINED, false, false, false, false)));
    UnpackedRow first = (UnpackedRow) table.getItems().get(0);
    assertThat(first.result()).isPresent();
    assertThat(table.getSelectionModel().getSelectedIndex()).isEqualTo(1);
    assertThat(folder.resolve("firings").toFile().list()).hasSize(3);
  }

  @Test
  void aRecordIsBegunWithoutReadingItsFolderBesides() {
    openSmallPlan();
    QueuedTaskRunner queue = new QueuedTaskRunner();
    openStudies(queue);
    int before = queue.waiting();
    choose("studies.record");
    assertThat(queue.waiting() - before).isEqualTo(1);
  }

  @Test
  void figuresAreReckonedWhileTheirWindowIsOpenAndCatchUpWhenItOpensAgain() {
    openSmallPlan();
    choose("studies.record");
    choose("studies.figures");
    assertThat(seconds()).isEqualTo("0");
    desk.run(() -> window("figures.title").hide());
    TableView<?> table = all("firings.title", TableView.class).stream().findFirst().orElseThrow();
    desk.run(() -> table.getSelectionModel().select(0));
    press("firings.title", "S second");
    assertThat(seconds()).isEqualTo("0");
    choose("studies.figures");
    assertThat(seconds()).isEqualTo("1");
  }

  /** How many seconds the figures count in the first firing. */
  private String seconds() {
    return all("figures.title", TableView.class).stream()
        .filter(table -> column(table, "figures.limit").isPresent())
        .flatMap(table -> column(table, "figures.seconds").stream())
        .map(column -> String.valueOf(column.getCellData(0)))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<TableColumn<?, ?>> column(TableView<?> table, String key) {
    for (TableColumn<?, ?> column : table.getColumns()) {
      if (column.getText().equals(Words.english().of(key))) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  @Test
  void theMadeUpYearOpensAndSaysThatItIsMadeUp() {
    choose("studies.madeUp");
    for (String title : new String[] {"learned.title", "figures.title", "firings.title"}) {
      assertThat(all(title, Label.class))
          .as(title)
          .anyMatch(
              label -> label.isVisible() && label.getText().startsWith("Made up: none of these"));
    }
    choose("studies.own");
    assertThat(all("firings.title", Label.class))
        .noneMatch(label -> label.isVisible() && label.getText().startsWith("Made up: none"));
  }

  @Test
  void everyEntryOfTheMenuOpensItsWindow() {
    openSmallPlan();
    for (String key : new String[] {"why", "worth", "firings", "learned", "figures"}) {
      choose("studies." + key);
      assertThat(window(key + ".title").isShowing()).as(key).isTrue();
    }
  }

  @Test
  void theWaitingPaneSaysHowManyMoreCouldEverFitOrThatItIsFull() {
    desk.model.boundedBy(request -> OptionalInt.of(SmallPlan.load().load().placed() + 2));
    openSmallPlan();
    desk.run(tasks::passTime);
    assertThat(labels()).anyMatch(text -> text.contains("at most 2 more could ever fit"));
    desk.model.boundedBy(request -> OptionalInt.of(SmallPlan.load().load().placed()));
    desk.run(() -> desk.model.open(DemoPlan.file(folder)));
    desk.run(tasks::passTime);
    openSmallPlan();
    desk.run(tasks::passTime);
    assertThat(labels()).anyMatch(text -> text.contains(": full."));
  }

  private List<String> labels() {
    return Screen.on(
        () ->
            Scenes.all(desk.window, Label.class).stream()
                .map(label -> String.valueOf(label.getText()))
                .toList());
  }
}
