package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.fixture.Weeks;
import shelfful.review.InspectedWeek;
import shelfful.ware.Stage;
import shelfful.week.WeekRequest;

/** Files of weeks: there and back, and what is said of wrong ones. */
class WeekFilesTest {
  private static final Path MONTH = Path.of("../demo-data/month.json");
  private static final Path EXAMPLE = Path.of("../docs/formats/week.example.json");
  private static final Path PLAN = Path.of("../docs/formats/week-plan.example.json");

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  private static List<Problem> problems(String text) {
    return WeekReader.request("week.json", text.getBytes(StandardCharsets.UTF_8)).problems();
  }

  @Test
  void theDemoMonthIsWhatItSays() {
    ReadResult<WeekRequest> read = WeekReader.request(MONTH);

    assertThat(read.problems()).isEmpty();
    WeekRequest month = read.found().orElseThrow();
    assertThat(month.kilns()).hasSize(2);
    assertThat(month.pieces()).isBetween(1150, 1300);
    assertThat(month.lines().stream().flatMap(l -> l.batch().order().stream()).distinct())
        .hasSize(40);
  }

  @Test
  void whatIsAskedIsWrittenAsItWasRead() throws IOException {
    WeekRequest month = WeekReader.request(MONTH).found().orElseThrow();
    byte[] bytes = WeekWriter.bytes(month);

    assertThat(WeekReader.request("again.json", bytes).found()).contains(month);
    assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(text(MONTH));
    assertThat(WeekWriter.bytes(WeekReader.request(EXAMPLE).found().orElseThrow()))
        .asString(StandardCharsets.UTF_8)
        .isEqualTo(text(EXAMPLE));
  }

  @Test
  void aPlanIsWrittenAsItWasRead() {
    InspectedWeek week =
        new PlanAWeek(
                Weeks.week(
                    14,
                    List.of(Weeks.kiln("K1", Weeks.weekdays())),
                    List.of(
                        Weeks.ware("A", "basin", 5, Stage.BONE_DRY, "2026-06-02"),
                        Weeks.ware("B", "tower", 9, Stage.GLAZED, "2026-06-03"))))
            .run(WeekListener.none())
            .orElseThrow();

    ReadResult<shelfful.week.WeekPlan> read = WeekReader.plan("plan.json", WeekWriter.bytes(week));

    assertThat(read.problems()).isEmpty();
    assertThat(read.found()).contains(week.plan());
    assertThat(week.plan().waiting()).as("some of it waits").isNotEmpty();
    assertThat(week.plan().late()).as("some of it is late").isNotEmpty();
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"lastDay\": \"2026-06-14\" | \"lastDay\": \"2026-05-14\" | '' | last day",
        "\"start\": \"2026-06-01T08:00\" | \"start\": \"2026-06-01\" | /start | 2026-06-01T08:00",
        "\"monday\": \"08:00-17:00\" | \"monday\": \"17:00-08:00\" | /kilns/0/hours/monday | earlier",
        "\"monday\": \"08:00-17:00\" | \"montag\": \"08:00-17:00\" | /kilns/0/hours/montag | monday",
        "\"up\": \"9:00\" | \"up\": \"9 hours\" | /kilns/0/programs/1/up | 9:30",
        "\"up\": \"9:00\" | \"up\": 9.001 | /kilns/0/programs/1/up | minute",
        "\"up\": \"9:00\" | \"up\": \"900:00\" | /kilns/0/programs/1 | ten days",
        "\"kiln\": \"round\" | \"kiln\": \"rond\" | /kilns/0/kiln | round",
        "\"id\": \"W1\" | \"id\": \"W2\" | /batches/1 | already",
        "\"ready\": \"2026-06-03T10:00\" | \"ready\": \"3 June\" | /batches/2/ready | time",
        "\"cone\": \"04\" | \"cone\": \"4.4\" | /kilns/0/programs/0/cone | cone",
        "\"kilowatts\": 9 | \"kilowatts\": -9 | /kilns/0 | kW",
        "\"rounds\": 0 | \"rounds\": 100000 | /effort | 10000",
        "shelfful week | shelfful wek | /format | shelfful week"
      })
  void whatIsWrongIsNamedByItsPath(String right, String wrong, String where, String hint)
      throws IOException {
    String text = text(EXAMPLE);
    assertThat(text).contains(right);

    List<Problem> problems =
        problems(text.replaceFirst(java.util.regex.Pattern.quote(right), wrong));

    assertThat(problems)
        .as(problems.toString())
        .anyMatch(problem -> problem.where().equals(where) && problem.sentence().contains(hint));
  }

  @Test
  void aPlanThatNamesWhatIsNotThereIsRefusedByPath() throws IOException {
    String text = text(PLAN);
    String firing = text.replaceFirst("\"program\": \"bisque\"", "\"program\": \"raku\"");

    List<Problem> problems =
        WeekReader.plan("plan.json", firing.getBytes(StandardCharsets.UTF_8)).problems();

    assertThat(problems).anyMatch(p -> p.where().startsWith("/firings/0/program"));
    assertThat(WeekReader.plan(PLAN).found()).isPresent();
  }

  @Test
  void lengthsOfTimeAreReadAsTextOrHours() {
    assertThat(TimeText.duration(node("\"9:30\"")).value()).contains(Duration.ofMinutes(570));
    assertThat(TimeText.duration(node("9.5")).value()).contains(Duration.ofMinutes(570));
    assertThat(TimeText.duration(Duration.ofMinutes(1445))).isEqualTo("24:05");
    assertThat(NumberRuns.written(List.of(1, 2, 3, 5, 7, 8))).isEqualTo("1-3, 5, 7-8");
    assertThat(NumberRuns.read(node("\"1-3, 5, 7 - 8\"")).value())
        .contains(List.of(1, 2, 3, 5, 7, 8));
    assertThat(NumberRuns.read(node("\"3-1\"")).value()).isEmpty();
  }

  private static com.fasterxml.jackson.databind.JsonNode node(String value) {
    byte[] bytes = ("{\"a\": " + value + "}").getBytes(StandardCharsets.UTF_8);
    return StrictJson.read(bytes, new Problems("")).orElseThrow().get("a");
  }
}
