package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.edit.Difference;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.fixture.Loads;
import shelfful.measure.Angle;
import shelfful.measure.Point;

class RecoveryFolderTest {
  private static final WorkPlan PLAN = WorkPlan.of(Loads.roundFull());

  @TempDir private Path folder;

  /** Keeps its work, one edit after another, until it is killed. */
  public static void main(String[] arguments) {
    RecoveryFolder recovery = new RecoveryFolder(Path.of(arguments[0]));
    for (int i = 1; ; i++) {
      recovery.keep(edited(i), Optional.of(Path.of("/pottery/tuesday.work.json")));
    }
  }

  private static WorkPlan edited(int step) {
    return new Edit.MovePiece("BK-001", Point.ofMillimetres(step % 97, step % 89), Angle.ZERO)
        .on(PLAN);
  }

  @Test
  void whatAKilledProgramLeftIsOfferedUntilItIsSettled() throws Exception {
    assertThat(lostAfter(3)).isZero();
  }

  @Test
  @Tag("slow")
  void fiftyKilledProgramsLoseNothing() throws Exception {
    assertThat(lostAfter(50)).isZero();
  }

  private int lostAfter(int kills) throws IOException, InterruptedException {
    SplittableRandom random = new SplittableRandom(3);
    RecoveryFolder recovery = new RecoveryFolder(folder);
    int lost = 0;
    for (int i = 0; i < kills; i++) {
      Process child = child();
      while (child.isAlive() && !hasWork()) {
        Thread.onSpinWait();
      }
      assertThat(recovery.left()).as("a running program's work is its own").isEmpty();
      child.waitFor(random.nextInt(1, 60), TimeUnit.MILLISECONDS);
      assertThat(child.isAlive()).isTrue();
      child.destroyForcibly().waitFor();
      List<RecoveryFolder.Left> left = recovery.left();
      lost += left.size() == 1 ? 0 : 1;
      for (RecoveryFolder.Left one : left) {
        assertThat(one.of()).contains(Path.of("/pottery/tuesday.work.json"));
        assertThat(Difference.between(PLAN, one.plan())).isEqualTo(new Difference(1, 0, 0, 1));
        assertThat(recovery.left()).as("nobody has answered yet").hasSize(1);
        recovery.settle(one);
      }
      assertThat(recovery.left()).isEmpty();
    }
    return lost;
  }

  private boolean hasWork() throws IOException {
    try (var files = Files.list(folder)) {
      return files.anyMatch(file -> file.getFileName().toString().startsWith("desk-"));
    }
  }

  private Process child() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            RecoveryFolderTest.class.getName(),
            folder.toString())
        .redirectErrorStream(true)
        .start();
  }

  @Test
  void savedWorkIsForgotten() {
    RecoveryFolder recovery = new RecoveryFolder(folder);
    assertThat(recovery.keep(PLAN, Optional.empty())).isEmpty();
    assertThat(folder).isDirectoryContaining("glob:**.work.json");
    recovery.forgetOwn();
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aFolderThatCannotBeMadeIsToldAndNothingElseFails() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("file"), "");
    RecoveryFolder recovery = new RecoveryFolder(inTheWay);
    assertThat(recovery.keep(PLAN, Optional.empty())).isPresent();
    assertThat(recovery.left()).isEmpty();
  }
}
