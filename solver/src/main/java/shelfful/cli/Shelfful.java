package shelfful.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.logging.LogManager;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import shelfful.app.WarmUp;
import shelfful.files.SaveFailed;

/** The program. */
@Command(
    name = "shelfful",
    description = "Plans how pottery goes into a kiln.",
    version = "shelfful 0.1.0",
    mixinStandardHelpOptions = true,
    subcommands = {PlanCommand.class, InspectCommand.class, DrawCommand.class, WeekCommand.class},
    footer = {
      "",
      "Exit codes: 0 done (pieces that wait are reported, not an error), 1 a fault of the program,",
      "2 the command or its input is wrong, 3 the plan breaks a rule, 130 stopped with the best plan saved."
    })
public final class Shelfful implements Runnable {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Runs a command and ends the program with its exit code. */
  public static void main(String[] args) {
    readLoggingConfiguration();
    if (args.length > 0 && (args[0].equals("plan") || args[0].equals("week"))) {
      WarmUp.start();
    }
    int code = run(args, utf8(System.out), utf8(System.err));
    System.exit(code);
  }

  private static PrintStream utf8(PrintStream stream) {
    return new PrintStream(stream, true, StandardCharsets.UTF_8);
  }

  /** Runs a command and says how it ended. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    PrintWriter talk = new PrintWriter(err, true, StandardCharsets.UTF_8);
    return new CommandLine(new Shelfful(), new CommandFactory(out, err))
        .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
        .setErr(talk)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(LocalDate.class, Shelfful::day)
        .registerConverter(LocalDateTime.class, Shelfful::moment)
        .setExecutionExceptionHandler((fault, command, parsed) -> tell(fault, talk))
        .execute(args);
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException unreadable) {
      throw new CommandLine.TypeConversionException(
          "'" + text + "' is not a day. Write it as 2026-06-01.");
    }
  }

  private static LocalDateTime moment(String text) {
    try {
      return LocalDateTime.parse(text);
    } catch (DateTimeParseException unreadable) {
      throw new CommandLine.TypeConversionException(
          "'" + text + "' is not a day with a time. Write it as 2026-06-01T08:00.");
    }
  }

  private static int tell(Exception fault, PrintWriter talk) {
    if (fault instanceof SaveFailed unsaved) {
      talk.println(unsaved.sentence());
      return ExitCodes.BAD_INPUT;
    }
    if (fault instanceof IOException) {
      talk.println("The folder cannot be written to: " + fault.getMessage());
      return ExitCodes.BAD_INPUT;
    }
    talk.println("Shelfful failed: " + fault);
    talk.println("This is a fault of the program; nothing was overwritten.");
    return ExitCodes.FAULT;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static void readLoggingConfiguration() {
    try (InputStream settings = Shelfful.class.getResourceAsStream("logging.properties")) {
      LogManager.getLogManager().readConfiguration(settings);
    } catch (IOException unreadable) {
      throw new IllegalStateException("the program's own logging settings are missing", unreadable);
    }
  }
}
