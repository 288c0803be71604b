package shelfful.cli;

import java.io.PrintStream;
import java.util.Map;
import java.util.function.BiFunction;
import picocli.CommandLine;

/** Makes the commands with the streams they write to. */
final class CommandFactory implements CommandLine.IFactory {
  private static final Map<Class<?>, BiFunction<PrintStream, PrintStream, Object>> COMMANDS =
      Map.ofEntries(
          Map.entry(PlanCommand.class, PlanCommand::new),
          Map.entry(InspectCommand.class, InspectCommand::new),
          Map.entry(DrawCommand.class, DrawCommand::new),
          Map.entry(WeekPlanCommand.class, WeekPlanCommand::new),
          Map.entry(WhatIfCommand.class, WhatIfCommand::new),
          Map.entry(WeekInspectCommand.class, WeekInspectCommand::new),
          Map.entry(WhyCommand.class, WhyCommand::new),
          Map.entry(WorthCommand.class, WorthCommand::new),
          Map.entry(RecordBeginCommand.class, RecordBeginCommand::new),
          Map.entry(RecordNoteCommand.class, RecordNoteCommand::new),
          Map.entry(RecordUnpackCommand.class, RecordUnpackCommand::new),
          Map.entry(RecordShowCommand.class, RecordShowCommand::new),
          Map.entry(HabitsCommand.class, HabitsCommand::new),
          Map.entry(FiguresCommand.class, FiguresCommand::new));

  private final PrintStream out;
  private final PrintStream err;

  CommandFactory(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    BiFunction<PrintStream, PrintStream, Object> command = COMMANDS.get(type);
    return command == null
        ? CommandLine.defaultFactory().create(type)
        : type.cast(command.apply(out, err));
  }
}
