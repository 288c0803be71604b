package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.app.WorkFile;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.measure.Angle;
import shelfful.measure.Point;
import shelfful.ui.DemoPlan;
import shelfful.ui.steps.Steps;
import shelfful.ui.task.FxTaskRunner;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;
import shelfful.ui.work.WorkViewModel;

/** Unsaved work, a program that is killed, and files that change under one's hands. */
class LeftWorkTest {
  private static final WorkPlan PLAN = WorkPlan.of(DemoPlan.load().load());

  @TempDir private Path folder;

  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();

  private static Edit move(int step) {
    String piece = PLAN.load().layers().get(0).placements().get(0).pieceId();
    return new Edit.MovePiece(piece, Point.ofMillimetres(step, 0), Angle.ZERO);
  }

  private RecoveryFolder recovery() {
    return new RecoveryFolder(folder.resolve("recovery"));
  }

  private long kept() throws IOException {
    if (!Files.isDirectory(folder.resolve("recovery"))) {
      return 0;
    }
    try (Stream<Path> files = Files.list(folder.resolve("recovery"))) {
      return files.filter(file -> file.toString().endsWith(".work.json")).count();
    }
  }

  @Test
  void unsavedWorkIsKeptOnceTheTimeIsUpAndForgottenWhenItIsSaved() throws IOException {
    WorkViewModel work = new WorkViewModel(tasks, recovery(), new Steps(), Edit::toString);
    work.beginSaved(PLAN, Optional.empty());
    assertThat(tasks.passTime()).as("nothing is unsaved").isZero();
    work.apply(move(1));
    work.apply(move(2));
    assertThat(kept()).isZero();
    assertThat(tasks.passTime()).as("once for both").isEqualTo(1);
    assertThat(kept()).isEqualTo(1);
    work.steps().undo();
    work.steps().undo();
    assertThat(kept()).as("it is as it was opened").isZero();
    work.steps().redo();
    tasks.passTime();
    assertThat(kept()).isEqualTo(1);
    work.save(WorkFile.at(folder.resolve("a.work.json")));
    assertThat(kept()).isZero();
  }

  /** Works on a plan until it is killed; the test's own child. */
  public static void main(String[] arguments) throws InterruptedException {
    Path folder = Path.of(arguments[0]);
    FxTaskRunner tasks = new FxTaskRunner();
    Platform.startup(() -> {});
    Platform.runLater(
        () -> {
          WorkViewModel work =
              new WorkViewModel(
                  tasks,
                  new RecoveryFolder(folder.resolve("recovery")),
                  new Steps(),
                  Edit::toString);
          WorkFile.Saved saved = WorkFile.at(folder.resolve("a.work.json")).saveAllTheSame(PLAN);
          work.beginSaved(PLAN, Optional.of(((WorkFile.Saved.Done) saved).file()));
          work.apply(move(5));
        });
    Thread.sleep(600_000);
  }

  @Test
  void workOfAKilledDeskIsOfferedWithTimeAndDifferenceAndComesBack() throws Exception {
    Process child =
        new ProcessBuilder(
                Stream.concat(
                        Stream.of(
                            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                            "-Dglass.platform=Monocle",
                            "-Dmonocle.platform=Headless",
                            "-Dprism.order=sw"),
                        Stream.of(
                            "-cp",
                            System.getProperty("java.class.path"),
                            LeftWorkTest.class.getName(),
                            folder.toString()))
                    .toList())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("child.log").toFile())
            .start();
    while (child.isAlive() && kept() == 0) {
      Thread.sleep(20);
    }
    assertThat(child.isAlive()).as(Files.readString(folder.resolve("child.log"))).isTrue();
    child.destroyForcibly().waitFor();

    DeskViewModel desk =
        new DeskViewModel(Words.english(), tasks, SearchLength.ofSteps(0), recovery());
    Saving saving = new Saving(Words.english(), desk, new SetPlaces());
    saving.offer(recovery(), () -> {});
    Notice offered = desk.messages().notice().get().orElseThrow();
    assertThat(offered.heading()).containsPattern("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");
    assertThat(offered.sentences().get(0)).contains("a.work.json").contains("1 pieces moved");
    desk.closeNotice();
    assertThat(recovery().left()).as("closing is no answer").hasSize(1);
    offered.choices().get(0).action().run();
    assertThat(desk.work().plan().get()).contains(move(5).on(PLAN));
    assertThat(desk.work().unsaved().get()).isTrue();
    assertThat(recovery().left()).isEmpty();
  }

  @Test
  void aFileChangedElsewhereIsKeptBesideTheOwn() throws IOException {
    DeskViewModel desk =
        new DeskViewModel(Words.english(), tasks, SearchLength.ofSteps(0), recovery());
    SetPlaces places = new SetPlaces();
    places.work = Optional.of(folder.resolve("a.work.json"));
    Saving saving = new Saving(Words.english(), desk, places);
    desk.work().begin(PLAN, Optional.empty());
    saving.save();
    byte[] elsewhere = Files.readAllBytes(folder.resolve("a.work.json"));
    elsewhere[elsewhere.length - 1] = ' ';
    Files.write(folder.resolve("a.work.json"), elsewhere);
    desk.work().apply(move(3));
    saving.save();
    Notice asked = desk.messages().notice().get().orElseThrow();
    assertThat(asked.heading()).contains("a.work.json").contains("changed");
    assertThat(Files.readAllBytes(folder.resolve("a.work.json"))).isEqualTo(elsewhere);
    asked.choices().get(0).action().run();
    assertThat(folder.resolve("a-2.work.json")).exists();
    assertThat(Files.readAllBytes(folder.resolve("a.work.json"))).isEqualTo(elsewhere);
    assertThat(desk.work().unsaved().get()).isFalse();
    assertThat(List.of(desk.work().file().orElseThrow().path().getFileName().toString()))
        .containsExactly("a-2.work.json");
  }
}
