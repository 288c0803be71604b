package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.KeepAStudio;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.drawing.PaperSize;
import shelfful.measure.LengthUnit;
import shelfful.ui.DemoPlan;
import shelfful.ui.DemoStudio;
import shelfful.ui.Screen;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class WorkshopTest {
  private final SettingsViewModel settings = SettingsViewModel.of(Settings.usual(Locale.ROOT));
  private DeskViewModel desk;
  private Stage owner;
  private final SetPlaces places = new SetPlaces();
  private Leaving leaving;
  private Workshop workshop;

  @TempDir private Path folder;

  @BeforeEach
  void open() {
    Screen.on(
        () -> {
          desk =
              new DeskViewModel(
                  Words.english(),
                  new SameThreadTaskRunner(),
                  SearchLength.ofSteps(0),
                  new RecoveryFolder(folder.resolve("recovery")));
          owner = new Stage();
          owner.setScene(new Scene(new Pane(), 400, 300));
          owner.show();
          workshop = begin();
          return null;
        });
  }

  private Workshop begin() {
    leaving =
        new Leaving(Words.english(), places, new Saving(Words.english(), desk, places).document());
    return new Workshop(
        Words.english(), desk, new Workshop.Around(settings, leaving, folder), owner);
  }

  @AfterEach
  void close() {
    if (owner != null) {
      Screen.on(
          () -> {
            owner.close();
            return null;
          });
    }
  }

  private static void run(Runnable step) {
    Screen.on(
        () -> {
          step.run();
          return null;
        });
  }

  private static Optional<Button> button(Node node, String text) {
    if (node instanceof Button button && button.getText().equals(text)) {
      return Optional.of(button);
    }
    return node instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream()
            .flatMap(child -> button(child, text).stream())
            .findFirst()
        : Optional.empty();
  }

  @Test
  void everyEntryOfTheMenuOpensItsWindow() {
    Menu menu = Screen.on(workshop::menu);
    run(() -> menu.getItems().forEach(item -> item.getOnAction().handle(null)));
    for (String title : new String[] {"studio.title", "batches.title", "settings.title"}) {
      Stage window = workshop.window(title).orElseThrow();
      assertThat(window.isShowing()).as(title).isTrue();
      assertThat(window.getOwner()).isSameAs(owner);
    }
  }

  @Test
  void aListPastedFromTheStartIsLookedAtAddedAndPlannedInThreeClicks() {
    run(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putString("form\tquantity\tglaze\nmug\t5\tclear-gloss\n");
          Clipboard.getSystemClipboard().setContent(content);
        });
    run(workshop::paste);
    Parent root = workshop.window("batches.title").orElseThrow().getScene().getRoot();
    run(
        () -> {
          root.applyCss();
          root.layout();
        });
    run(() -> button(root, "Add 1 batch").orElseThrow().fire());
    run(() -> button(root, "Plan this list").orElseThrow().fire());
    assertThat(desk.shown().get().orElseThrow().lists().counts()).contains("5 of 5 in");
  }

  @Test
  void unitAndPaperOfTheSettingsAreThoseOfTheLoadShownAndChangeItAtOnce() {
    run(() -> desk.open(DemoPlan.file(folder)));
    ShownLoad millimetres = desk.shown().get().orElseThrow();
    run(() -> settings.change(one -> one.with(LengthUnit.INCHES).with(PaperSize.LETTER)));
    ShownLoad inches = desk.shown().get().orElseThrow();
    assertThat(millimetres.lists().layers().get(0).clearHeight()).endsWith(" mm");
    assertThat(inches.lists().layers().get(0).clearHeight()).endsWith(" in");
    assertThat(inches.printing().format().width()).isEqualTo(PaperSize.LETTER.width());
    assertThat(inches.judged()).as("the load itself stays").isSameAs(millimetres.judged());
  }

  @Test
  void theStudioThatWasOpenLastIsThereAtTheNextStartAndAPlanChangesNothingOfIt()
      throws IOException {
    Path mine = Files.write(folder.resolve("mine.json"), KeepAStudio.bytes(DemoStudio.studio()));
    new LastStudio(folder).note(mine);
    Settings before = settings.settings().get();
    run(() -> workshop = begin());
    run(() -> desk.open(DemoPlan.file(folder)));
    assertThat(new LastStudio(folder).file()).contains(mine.toAbsolutePath());
    assertThat(settings.settings().get()).isEqualTo(before);
    Files.delete(mine);
    assertThat(new LastStudio(folder).file()).isEmpty();
    assertThat(Screen.on(leaving::mayClose)).as("nothing is unsaved").isTrue();
  }
}
