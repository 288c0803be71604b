package shelfful.cli;

import java.io.PrintStream;
import picocli.CommandLine;

/** Makes the commands with the streams they write to. */
final class CommandFactory implements CommandLine.IFactory {
  private final PrintStream out;
  private final PrintStream err;

  CommandFactory(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == PlanCommand.class) {
      return type.cast(new PlanCommand(out, err));
    }
    if (type == InspectCommand.class) {
      return type.cast(new InspectCommand(out, err));
    }
    if (type == DrawCommand.class) {
      return type.cast(new DrawCommand(out, err));
    }
    if (type == WeekPlanCommand.class) {
      return type.cast(new WeekPlanCommand(out, err));
    }
    if (type == WhatIfCommand.class) {
      return type.cast(new WhatIfCommand(out, err));
    }
    if (type == WeekInspectCommand.class) {
      return type.cast(new WeekInspectCommand(out, err));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
