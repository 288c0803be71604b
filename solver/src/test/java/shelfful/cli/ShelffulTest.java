package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.files.PlanReader;
import shelfful.load.Load;
import shelfful.load.Placement;

/**
 * The command line from outside: what goes in, what comes out on which stream, and the exit code.
 */
class ShelffulTest {
  private static final String DEMO = "../demo-data/";

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    out.reset();
    err.reset();
    return Shelfful.run(args, new PrintStream(out), new PrintStream(err));
  }

  private int plan(String list, String... more) {
    return run(
        java.util.stream.Stream.concat(
                List.of("plan", DEMO + "studio.json", list).stream(), List.of(more).stream())
            .toArray(String[]::new));
  }

  private int planSmall(String... more) {
    return plan(
        DEMO + "list-60.csv",
        java.util.stream.Stream.concat(
                List.of("--day", "2026-06-01", "--steps", "2", "--into", folder.toString())
                    .stream(),
                List.of(more).stream())
            .toArray(String[]::new));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void leavesAPlanSheetsAndASummary() {
    int code = planSmall();

    assertThat(code).as(told()).isZero();
    assertThat(folder.resolve("list-60.plan.json")).isNotEmptyFile();
    assertThat(folder.resolve("list-60.pdf")).isNotEmptyFile();
    assertThat(said()).contains("of 60 pieces in").contains("L1").contains("list-60.pdf");
  }

  @Test
  void goesOnFromAnEarlierPlanWithoutMovingWhatStood() throws IOException {
    planSmall();
    Path plan = folder.resolve("list-60.plan.json");
    Load before = PlanReader.read(plan).found().orElseThrow();

    assertThat(planSmall("--after", plan.toString())).as(told()).isZero();

    Load after = PlanReader.read(plan).found().orElseThrow();
    assertThat(after.placed()).isGreaterThanOrEqualTo(before.placed());
    assertThat(placements(after)).containsAll(placements(before));
  }

  private static List<Placement> placements(Load load) {
    return load.layers().stream().flatMap(layer -> layer.placements().stream()).toList();
  }

  @Test
  void refusesToGoOnFromAPlanForAnotherKiln() {
    planSmall();

    int code =
        planSmall("--after", folder.resolve("list-60.plan.json").toString(), "--kiln", "front");

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("--after").contains("front").contains("--kiln");
  }

  @Test
  void printsThePlanItselfAsJsonAndNothingElse() throws IOException {
    int code = planSmall("--json", "--quiet");

    assertThat(code).isZero();
    assertThat(told()).isEmpty();
    assertThat(out.toByteArray())
        .isEqualTo(Files.readAllBytes(folder.resolve("list-60.plan.json")));
  }

  @Test
  void judgesItsOwnPlanAndDrawsIt() {
    planSmall();
    String plan = folder.resolve("list-60.plan.json").toString();

    assertThat(run("inspect", plan)).isZero();
    assertThat(said()).startsWith("The plan breaks no rule.");
    assertThat(run("inspect", plan, "--json")).isZero();
    assertThat(said()).contains("\"passed\": true");
    Path sheets = folder.resolve("letter.pdf");
    assertThat(
            run("draw", plan, "--paper", "letter", "--unit", "inches", "--to", sheets.toString()))
        .isZero();
    assertThat(sheets).isNotEmptyFile();
  }

  @Test
  void drawsAPhonePageAndAShelfAtTrueSize() throws IOException {
    planSmall();
    String plan = folder.resolve("list-60.plan.json").toString();
    assertThat(folder.resolve("list-60.html")).isNotEmptyFile();
    Path phone = folder.resolve("phone.html");
    Path shelf = folder.resolve("shelf.pdf");
    assertThat(
            run(
                "draw",
                plan,
                "--landscape",
                "--revision",
                "3",
                "--printed",
                "2026-05-31",
                "--phone",
                phone.toString(),
                "--true-size",
                shelf.toString(),
                "--layer",
                "L1"))
        .isZero();
    assertThat(Files.readString(phone)).contains("revision 3, 2026-05-31");
    assertThat(shelf).isNotEmptyFile();
  }

  @Test
  void namesTheLayersThereAreWhenAskedForAnother() throws IOException {
    planSmall();
    String plan = folder.resolve("list-60.plan.json").toString();
    String shelf = folder.resolve("shelf.pdf").toString();
    assertThat(run("draw", plan, "--true-size", shelf, "--layer", "L99"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(folder.resolve("shelf.pdf")).doesNotExist();
  }

  @Test
  void doesNotDrawAPlanThatBreaksARule() throws IOException {
    planSmall();
    Path plan = folder.resolve("list-60.plan.json");
    String moved = Files.readString(plan).replaceFirst("\"x\": -?[0-9.]+", "\"x\": 250");
    Files.writeString(plan, moved);

    assertThat(run("inspect", plan.toString())).isEqualTo(ExitCodes.RULE_BROKEN);
    assertThat(said()).contains("BREAKS").contains("L1");
    assertThat(run("draw", plan.toString())).isEqualTo(ExitCodes.RULE_BROKEN);
    assertThat(said()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE", "ja-JP"})
  void givesTheSameBytesInEveryCountry(String country) throws IOException {
    planSmall();
    byte[] plan = Files.readAllBytes(folder.resolve("list-60.plan.json"));
    byte[] sheets = Files.readAllBytes(folder.resolve("list-60.pdf"));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(country));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      planSmall();
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }

    assertThat(folder.resolve("list-60.plan.json")).hasBinaryContent(plan);
    assertThat(folder.resolve("list-60.pdf")).hasBinaryContent(sheets);
  }

  @Test
  void plansTheGoodRowsAndTellsOfTheBadOnes() throws IOException {
    Path list = folder.resolve("mixed.csv");
    Files.writeString(list, "form,glaze,quantity\nmug,clear-gloss,3\nmugg,clear-gloss,2\nmug,,x\n");

    int code =
        plan(list.toString(), "--steps", "0", "--into", folder.toString(), "--day", "2026-06-01");

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("line 3").contains("mugg").contains("line 4").contains("quantity");
    assertThat(said()).contains("3 of 3 pieces in");
    assertThat(folder.resolve("mixed.pdf")).isNotEmptyFile();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--kiln nowhere",
        "--cone 99",
        "--cone 10",
        "--columns spiral",
        "--cone-tolerance -1",
        "--seconds -5",
        "--steps -1",
        "--steps many",
        "--atmosphere steam",
        "--day yesterday",
        "--unit cubits",
        "--paper napkin",
        "--after no-such-plan.json",
        "--speed 9"
      })
  void refusesAWrongOptionByName(String wrong) {
    String[] words = wrong.split(" ");

    int code = planSmall(words);

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains(words[0]).doesNotContain("Exception").doesNotContain("\tat ");
  }

  @Test
  void tellsWhenAFileIsNotThere() {
    assertThat(run("plan", "no-studio.json", DEMO + "list-60.csv")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("no-studio.json");
    assertThat(run("inspect", "no-plan.json")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("no-plan.json");
  }

  @Test
  void tellsWhenThePlanCannotBeSaved() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "in the way");

    int code = planSmall("--into", file.toString());

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(file).hasContent("in the way");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "inspect", "draw"})
  void helpsWithExamples(String command) {
    assertThat(run(command, "--help")).isZero();
    assertThat(said()).contains("Examples:").contains("shelfful " + command);
    assertThat(said().lines().count()).isLessThan(60);
  }
}
