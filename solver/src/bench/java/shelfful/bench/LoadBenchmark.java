package shelfful.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import shelfful.load.LoadRequest;
import shelfful.planning.SearchBudget;
import shelfful.sample.SampleLoad;

/** Plans every instance from every seed, compares, and prints a table. See docs/engine.md. */
@Command(name = "loads", description = "Measures planning on whole loads.")
public final class LoadBenchmark implements Callable<Integer> {
  @Option(names = "--instances", split = ",", description = "names; all when left out")
  private List<String> instances = List.of();

  @Option(names = "--seeds", description = "how many seeds, from 1 on")
  private int seeds = 10;

  @Option(names = "--seconds", description = "search time of a run")
  private double seconds = 10;

  @Option(names = "--steps", description = "steps of a run instead of seconds; repeatable")
  private long steps = -1;

  @Option(names = "--csv", description = "where every run goes as a line")
  private Path csv = Path.of("solver", "target", "loads.csv");

  @Option(names = "--demo", description = "folder of the demo studio and lists")
  private Path demo = Path.of("demo-data");

  @Option(
      names = "--against",
      split = ",",
      description = "what else to make loads by: ${COMPLETION-CANDIDATES}")
  private List<Method> others = List.of(Method.GREEDY, Method.BY_HAND, Method.EXACT_CHOICE);

  @Option(names = "--list", description = "only names the instances")
  private boolean list;

  @Option(names = "--help", usageHelp = true, description = "shows this")
  private boolean help;

  @Spec private CommandSpec spec;

  /** Started by Maven; see docs/engine.md. */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new LoadBenchmark()).execute(arguments));
  }

  @Override
  public Integer call() throws IOException {
    List<SampleLoad> subjects = subjects();
    if (list) {
      subjects.forEach(subject -> say("%-22s %s", subject.name(), subject.shows()));
      return 0;
    }
    say("%s", Machine.heading());
    say("%d seeds, %s a run", seeds, steps >= 0 ? steps + " steps" : seconds + " s");
    // The first plan of a fresh machine is slow; nothing of it is counted.
    PlannedLoad.run("warm-up", subjects.get(0).asked(), Method.PLANNER, PlannedLoad.ofSeconds(3));
    List<Result> results = new ArrayList<>();
    for (SampleLoad subject : subjects) {
      results.add(measure(subject));
      // After each instance, so that a run that is cut short leaves what it has.
      RunSheet.write(csv, results);
      Files.writeString(table(), SummaryTable.of(results));
    }
    say("%n%s", SummaryTable.of(results));
    say("Every load passed the inspector. Every run: %s; this table: %s", csv, table());
    return 0;
  }

  /** Beside the CSV file. */
  private Path table() {
    return csv.resolveSibling(csv.getFileName().toString().replaceFirst("\\.csv$", "") + ".md");
  }

  private List<SampleLoad> subjects() {
    if (seeds < 1 || seconds < 0) {
      throw new ParameterException(
          spec.commandLine(), "There must be at least one seed, and not less than no time.");
    }
    try {
      return Subjects.named(instances, demo);
    } catch (IllegalArgumentException unknown) {
      throw new ParameterException(spec.commandLine(), unknown.getMessage());
    }
  }

  private Result measure(SampleLoad subject) {
    List<Run> runs = new ArrayList<>();
    if (others.contains(Method.GREEDY)) {
      runs.add(plan(subject, Method.GREEDY, 1, () -> SearchBudget.ofSteps(0)));
    }
    if (others.contains(Method.BY_HAND)) {
      runs.add(told(OtherLoads.byHand(subject)));
    }
    for (int seed = 1; seed <= seeds; seed++) {
      runs.add(plan(subject, Method.PLANNER, seed, budget()));
    }
    if (others.contains(Method.EXACT_CHOICE)) {
      runs.add(told(OtherLoads.exactChoice(subject, runs)));
    }
    LoadRequest asked = subject.asked();
    return new Result(
        subject.name(), asked.pieces().size(), Limit.PROVEN.of(asked), runs);
  }

  private PlannedLoad.Budget budget() {
    return steps >= 0 ? () -> SearchBudget.ofSteps(steps) : PlannedLoad.ofSeconds(seconds);
  }

  private static Run plan(
      SampleLoad subject, Method method, int seed, PlannedLoad.Budget budget) {
    return told(PlannedLoad.run(subject.name(), subject.request(seed), method, budget));
  }

  private static Run told(Run run) {
    Figures figures = run.figures();
    say(
        "%-22s %-12s seed %2d: %4d pieces, worth %6d, %6.1f s",
        run.subject(),
        run.method(),
        run.seed(),
        figures.pieces(),
        figures.worth(),
        run.effort().millis() / 1000.0);
    return run;
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
