package shelfful.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Runs of firings. */
@Command(
    name = "week",
    description = "Plans a run of firings over days: what is fired when, in which kiln.",
    mixinStandardHelpOptions = true,
    subcommands = {WeekPlanCommand.class, WhatIfCommand.class, WeekInspectCommand.class},
    footer = {
      "",
      "Examples:",
      "  shelfful week plan demo-data/month.json --ics --sheets",
      "  shelfful week what-if plans/month.week.json --out-of-order round-top,2026-06-08T00:00,2026-06-11T00:00"
    })
final class WeekCommand implements Runnable {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
