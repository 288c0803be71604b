package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.files.PlanReader;
import shelfful.files.PlanWriter;
import shelfful.files.SaveFailed;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;

class WhyCommandTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    out.reset();
    err.reset();
    return Shelfful.run(args, new PrintStream(out), new PrintStream(err));
  }

  private Path plan() throws SaveFailed {
    Load load =
        new LoadDraft(
                Studios.studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("BK", "beaker", "chalk", 2))
            .level("F", "1in")
            .place("F1", "BK-001", 0, 0, 0)
            .load();
    Path file = folder.resolve("a.plan.json");
    PlanWriter.write(((Inspection.Passed) new Inspector().inspect(load)).load(), file);
    return file;
  }

  @Test
  void listsWaysByNumberAndWritesOneAsANewPlanBesideTheOld() throws SaveFailed, IOException {
    Path plan = plan();
    byte[] before = Files.readAllBytes(plan);
    assertThat(run("why", plan.toString(), "--steps", "1")).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("1 x beaker in chalk (BK)")
        .contains("[1] It goes in on F1 as it stands; nothing moves.")
        .contains("[2] It goes into the next firing");

    assertThat(run("why", plan.toString(), "--steps", "1", "--apply", "1")).isZero();
    Path applied = folder.resolve("a.remedy-1.plan.json");
    assertThat(PlanReader.read(applied).found().map(Load::placed)).isEqualTo(Optional.of(2));
    assertThat(plan).hasBinaryContent(before);
    assertThat(run("inspect", applied.toString())).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("2 in: full");
  }

  @Test
  void neverWritesOverAFileAndRefusesANumberThereIsNot() throws SaveFailed {
    Path plan = plan();
    assertThat(run("why", plan.toString(), "--steps", "1", "--apply", "1", "--to", plan.toString()))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("is there already");
    assertThat(run("why", plan.toString(), "--steps", "1", "--apply", "9"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("no remedy 9");
  }
}
