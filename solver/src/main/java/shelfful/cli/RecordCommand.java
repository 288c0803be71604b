package shelfful.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Keeps what became of a load. */
@Command(
    name = "record",
    description = "Keeps what became of a load: the firing as it went, each piece as it came out.",
    mixinStandardHelpOptions = true,
    subcommands = {
      RecordBeginCommand.class,
      RecordNoteCommand.class,
      RecordUnpackCommand.class,
      RecordShowCommand.class
    })
final class RecordCommand implements Runnable {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
