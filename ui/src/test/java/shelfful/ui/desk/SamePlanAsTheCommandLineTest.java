package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.cli.Shelfful;
import shelfful.files.PlanReader;
import shelfful.files.PlanWriter;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class SamePlanAsTheCommandLineTest {
  private static final int STEPS = 5;

  @TempDir private Path folder;

  @Test
  void theSameListSeedAndStepsGiveTheSamePlanOnTheDeskAndOnTheCommandLine() throws Exception {
    Path written = commandLine();
    Load asked = PlanReader.read(written).found().orElseThrow();
    DeskViewModel desk =
        new DeskViewModel(
            Words.english(),
            new SameThreadTaskRunner(),
            SearchLength.ofSteps(STEPS),
            new RecoveryFolder(folder.resolve("recovery")));
    desk.plan(asked.request());
    InspectedLoad planned = desk.shown().get().flatMap(ShownLoad::inspected).orElseThrow();
    assertThat(PlanWriter.bytes(planned)).isEqualTo(Files.readAllBytes(written));
  }

  private Path commandLine() throws IOException, InterruptedException {
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Shelfful.class.getName(),
                "plan",
                "../demo-data/studio.json",
                "../demo-data/list-60.csv",
                "--steps",
                Integer.toString(STEPS),
                "--day",
                "2026-06-01",
                "--quiet",
                "--into",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("talk.txt").toFile())
            .start();
    assertThat(program.waitFor()).as(Files.readString(folder.resolve("talk.txt"))).isZero();
    return folder.resolve("list-60.plan.json");
  }
}
