package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.KeepFirings;
import shelfful.app.MadeUpYear;
import shelfful.files.SaveFailed;
import shelfful.files.StudioReader;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/** A made-up year with a glaze that does badly at the bottom, and one firing of another kiln. */
class HabitsCommandTest {
  private static final Path DEMO = Path.of("..", "demo-data", "studio.json");
  private static final Studio STUDIO = StudioReader.read(DEMO).found().orElseThrow();
  private static final List<UnpackedFiring> YEAR = MadeUpYear.of(STUDIO);
  private static final String COOL = MadeUpYear.coolGlaze(STUDIO).id();

  @TempDir private static Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    out.reset();
    err.reset();
    return Shelfful.run(args, new PrintStream(out), new PrintStream(err));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @BeforeAll
  static void keepTheYear() throws SaveFailed {
    for (UnpackedFiring one : YEAR) {
      Path file = folder.resolve(one.record().id() + ".firing.json");
      KeepFirings.note(one.record(), file);
      KeepFirings.add(one.results(), file);
    }
    Firing other = new Firing("other", FiringKind.GLAZE, new Cone("6"), 0, Atmosphere.OXIDATION);
    FiringRecord record =
        new FiringRecord(
            "other",
            LocalDate.of(2026, 1, 1),
            other,
            "OTHER",
            0,
            Optional.empty(),
            List.of(),
            FiringCourse.UNKNOWN);
    KeepFirings.note(record, folder.resolve("other.firing.json"));
  }

  @Test
  void countsTheFiringsOfTheKilnThatIsAskedFor() {
    String own = STUDIO.kilns().get(0).id();
    assertThat(run("habits", folder.toString())).isZero();
    assertThat(said()).contains("pieces of " + (YEAR.size() + 1) + " firings");
    assertThat(run("habits", folder.toString(), "--kiln", own)).isZero();
    assertThat(said()).contains("pieces of " + YEAR.size() + " firings");
    assertThat(run("habits", folder.toString(), "--kiln", "none")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("none").contains("other, " + own);
  }

  @Test
  void saysLostWhereOnlyLostPiecesAreCounted() {
    run("habits", folder.toString());
    assertThat(said()).contains(" flawed, ").doesNotContain(" lost, ");
    run("habits", folder.toString(), "--lost-only");
    assertThat(said()).contains(" lost, ").doesNotContain(" flawed, ");
  }

  @Test
  void aSuggestionThatChangesNothingIsNotToldAsAccepted() throws IOException {
    Path studio = Files.copy(DEMO, folder.resolve("studio.json"));
    assertThat(run("habits", folder.toString())).isZero();
    Pattern suggested = Pattern.compile("\\[([0-9]+)\\] " + Pattern.quote(COOL) + " at the bottom");
    String number =
        suggested.matcher(said()).results().findFirst().map(one -> one.group(1)).orElseThrow();
    String[] accept = {
      "habits", folder.toString(), "--studio", studio.toString(), "--accept", number
    };
    assertThat(run(accept)).isZero();
    assertThat(said()).contains("Accepted in");
    byte[] once = Files.readAllBytes(studio);
    assertThat(once).isNotEqualTo(Files.readAllBytes(DEMO));
    assertThat(run(accept)).isZero();
    assertThat(said()).contains("Nothing to change in").doesNotContain("Accepted");
    assertThat(studio).hasBinaryContent(once);
    Files.writeString(
        studio, Files.readString(DEMO).replace("\"" + COOL + "\"", "\"renamed-glaze\""));
    assertThat(run(accept)).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("has no glaze " + COOL);
  }
}
