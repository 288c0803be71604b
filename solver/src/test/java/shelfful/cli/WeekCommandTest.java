package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.review.InspectedWeek;
import shelfful.week.WeekEffort;
import shelfful.week.WeekRequest;

/** Weeks on the command line, from outside. */
class WeekCommandTest {
  private static final String EXAMPLE = "../docs/formats/week.example.json";

  @TempDir private Path folder;
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

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private int plan(String... more) {
    String[] args =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(
                    "week", "plan", EXAMPLE, "--rounds", "1", "--into", folder.toString()),
                java.util.stream.Stream.of(more))
            .toArray(String[]::new);
    return run(args);
  }

  @Test
  void savesPlanSheetsAndCalendarAndTellsWhatIsLateAndWhatItCosts() throws IOException {
    int code = plan("--sheets", "--ics");

    assertThat(code).as(told()).isZero();
    assertThat(said()).contains("kWh").contains("estimate").contains("late").contains("F1");
    assertThat(folder.resolve("week.example.week.json")).isNotEmptyFile();
    assertThat(folder.resolve("week.example-F1.pdf")).isNotEmptyFile();
    assertThat(Files.readString(folder.resolve("week.example.ics"))).contains("BEGIN:VEVENT");
  }

  @Test
  void whatItSavesItInspectsPlansAgainAndFreezes() {
    plan();
    String file = folder.resolve("week.example.week.json").toString();

    assertThat(run("week", "inspect", file)).isZero();
    assertThat(said()).contains("breaks no rule");
    assertThat(run("week", "plan", file, "--rounds", "0", "--freeze", "F1", "--into", folder + ""))
        .as(told())
        .isZero();
    assertThat(said()).contains("held");
    assertThat(run("week", "plan", file, "--freeze", "F99")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("F99");
  }

  @Test
  void printsTheSameJsonForTheSameSeed() {
    plan("--json", "--quiet");
    byte[] once = out.toByteArray();
    plan("--json", "--quiet");

    assertThat(out.toByteArray()).isEqualTo(once);
    assertThat(told()).isEmpty();
  }

  @Test
  void whatIfLaysBothWeeksSideBySide() {
    int code =
        run(
            "week",
            "what-if",
            EXAMPLE,
            "--rounds",
            "0",
            "--out-of-order",
            "round,2026-06-01T00:00,2026-06-06T00:00");

    assertThat(code).as(told()).isZero();
    assertThat(said()).contains("before").contains("after").contains("Pieces finished late");
  }

  @Test
  void whatIfWithoutAChangeOrWithAWrongOneIsRefused() {
    assertThat(run("week", "what-if", EXAMPLE, "--rounds", "0")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("--extra");
    assertThat(run("week", "what-if", EXAMPLE, "--rounds", "0", "--extra", "round,raku,yesterday"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("yesterday").contains("2026-06-01T08:00");
    assertThat(
            run(
                "week",
                "what-if",
                EXAMPLE,
                "--rounds",
                "0",
                "--extra",
                "round,raku,2026-06-07T08:00"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("raku");
  }

  @Test
  void aBrokenPlanIsJudgedBroken() throws IOException {
    plan();
    Path file = folder.resolve("week.example.week.json");
    String text = Files.readString(file);
    Path wrong = folder.resolve("wrong.json");
    Files.writeString(
        wrong, text.replaceFirst("\"loads\": \"2026-06-01T08", "\"loads\": \"2026-06-01T07"));

    assertThat(run("week", "inspect", wrong.toString())).isEqualTo(ExitCodes.RULE_BROKEN);
    assertThat(said()).contains("BREAKS");
  }

  @Test
  void aPlanThatBreaksRulesIsNotPlannedOn() throws IOException {
    plan();
    String text = Files.readString(folder.resolve("week.example.week.json"));
    Path wrong = folder.resolve("wrong.json");
    // The last piece of a portion gets a number that its batch does not have.
    Files.writeString(
        wrong,
        Pattern.compile("\"numbers\": \"1-(\\d+)\"")
            .matcher(text)
            .replaceFirst(
                run -> "\"numbers\": \"1-" + (Integer.parseInt(run.group(1)) - 1) + ",999\""));
    assertThat(wrong).content().contains(",999\"");

    assertThat(run("week", "plan", wrong.toString(), "--rounds", "0", "--into", folder + ""))
        .as(told())
        .isEqualTo(ExitCodes.RULE_BROKEN);

    assertThat(told()).contains("number 999").contains("wrong.json").contains("breaks rules");
    assertThat(folder.resolve("wrong.week.json")).doesNotExist();
  }

  private int whatIf(Function<WeekRequest, Optional<InspectedWeek>> planner, String... args) {
    out.reset();
    err.reset();
    WhatIfCommand command = new WhatIfCommand(new PrintStream(out), new PrintStream(err), planner);
    return new CommandLine(command).execute(args);
  }

  @Test
  void whatIfPlansNothingForAWishThatMakesNoSense() {
    AtomicInteger planned = new AtomicInteger();
    Function<WeekRequest, Optional<InspectedWeek>> planner =
        request -> {
          planned.incrementAndGet();
          return Optional.empty();
        };

    for (String[] wrong :
        List.of(
            new String[] {EXAMPLE},
            new String[] {EXAMPLE, "--extra", "round,raku,2026-06-07T08:00"},
            new String[] {EXAMPLE, "--extra", "round,glaze,yesterday"},
            new String[] {EXAMPLE, "--out-of-order", "round,2026-06-07T08:00"},
            new String[] {EXAMPLE, "--order", folder.resolve("none.csv").toString()})) {
      assertThat(whatIf(planner, wrong)).as("%s", List.of(wrong)).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(told()).isNotBlank();
    }
    assertThat(planned).hasValue(0);
  }

  @Test
  void whatIfSaysThatNoWeekPassedTheJudge() {
    String[] args = {EXAMPLE, "--out-of-order", "round,2026-06-01T00:00,2026-06-06T00:00"};

    assertThat(whatIf(request -> Optional.empty(), args)).isEqualTo(ExitCodes.FAULT);
    assertThat(told()).contains("No week passed the judge.");

    AtomicInteger calls = new AtomicInteger();
    Function<WeekRequest, Optional<InspectedWeek>> onlyOnce =
        request ->
            calls.getAndIncrement() == 0
                ? new PlanAWeek(request.with(new WeekEffort(1, 0, 0))).run(WeekListener.none())
                : Optional.empty();
    assertThat(whatIf(onlyOnce, args)).isEqualTo(ExitCodes.FAULT);
    assertThat(told()).contains("No week passed the judge.");
  }

  @Test
  void whatIfRefusesAPlanThatBreaksRules() throws IOException {
    plan();
    String text = Files.readString(folder.resolve("week.example.week.json"));
    Path wrong = folder.resolve("wrong.json");
    Files.writeString(
        wrong, text.replaceFirst("\"loads\": \"2026-06-01T08", "\"loads\": \"2026-06-01T07"));

    String order = folder.resolve("none.csv").toString();
    assertThat(run("week", "what-if", wrong.toString(), "--order", order))
        .isEqualTo(ExitCodes.RULE_BROKEN);
    assertThat(told()).contains("wrong.json").contains("breaks rules");
  }
}
