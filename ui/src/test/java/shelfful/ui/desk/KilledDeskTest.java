package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.SearchLength;
import shelfful.files.WorkWriter;
import shelfful.ui.Screen;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.task.FxTaskRunner;
import shelfful.ui.words.Words;

/** Work by keys alone at a desk that is killed in the middle of it, and what comes back. */
class KilledDeskTest {
  private static final String LAST = "last.work.json";

  @TempDir private Path folder;

  /** Works by keys until it is killed, with a piece in the hand; the test's own child. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]);
    OpenDesk desk =
        OpenDesk.open(new FxTaskRunner(), SearchLength.ofSteps(0), folder.resolve("recovery"));
    desk.key(KeyCode.D, false, true);
    while (Screen.on(() -> desk.model.work().plan().get().isEmpty())) {
      Thread.sleep(20);
    }
    desk.tabTo(TableView.class::isInstance);
    desk.key(KeyCode.DOWN);
    desk.key(KeyCode.DOWN);
    desk.tabTo(ShelfView.class::isInstance);
    desk.key(KeyCode.RIGHT);
    desk.key(KeyCode.UP);
    desk.key(KeyCode.ENTER);
    byte[] last = Screen.on(() -> WorkWriter.bytes(desk.model.work().plan().get().orElseThrow()));
    Files.write(folder.resolve(LAST), last);
    desk.key(KeyCode.RIGHT);
    Thread.sleep(600_000);
  }

  private boolean isKept() throws IOException {
    Path recovery = folder.resolve("recovery");
    if (!Files.exists(folder.resolve(LAST)) || !Files.isDirectory(recovery)) {
      return false;
    }
    try (Stream<Path> files = Files.list(recovery)) {
      byte[] last = Files.readAllBytes(folder.resolve(LAST));
      return files
          .filter(file -> file.toString().endsWith(".work.json"))
          .anyMatch(file -> holds(file, last));
    }
  }

  private static boolean holds(Path file, byte[] bytes) {
    try {
      return Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException beingReplaced) {
      return false;
    }
  }

  private Process child() throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dprism.order=sw",
            "-cp",
            System.getProperty("java.class.path"),
            KilledDeskTest.class.getName(),
            folder.toString());
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("child.log").toFile())
        .start();
  }

  @Test
  void whatWasDoneByKeysBeforeTheKillIsRecoveredByKeys() throws Exception {
    Screen.on(() -> null);
    Process child = child();
    while (child.isAlive() && !isKept()) {
      Thread.sleep(20);
    }
    assertThat(child.isAlive()).as(Files.readString(folder.resolve("child.log"))).isTrue();
    child.destroyForcibly().waitFor();

    OpenDesk desk = OpenDesk.atOnce(SearchLength.ofSteps(0), folder.resolve("recovery"));
    desk.run(() -> desk.window.offer(desk.recovery, () -> {}));
    desk.tabTo(node -> says(node, Words.english().of("choice.recover")));
    desk.key(KeyCode.SPACE);
    assertThat(WorkWriter.bytes(desk.model.work().plan().get().orElseThrow()))
        .isEqualTo(Files.readAllBytes(folder.resolve(LAST)));
    assertThat(desk.model.work().unsaved().get()).isTrue();
    assertThat(desk.model.work().plan().get().orElseThrow().pinned()).hasSize(1);
    desk.close();
  }

  private static boolean says(Node node, String words) {
    return node instanceof Button button && button.getText().equals(words);
  }
}
