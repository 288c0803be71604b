package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import shelfful.app.ChangeAWeek;
import shelfful.app.WeekChange;
import shelfful.files.BatchListReader;
import shelfful.ware.Batch;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/** Options that say what is to be otherwise in a week. */
final class WhatIfOptions {
  @Option(
      names = "--extra",
      paramLabel = "KILN,PROGRAM,TIME",
      split = ",",
      description = "One more firing, loaded at this time, in working hours or not.")
  private List<String> extra = List.of();

  @Option(
      names = "--out-of-order",
      paramLabel = "KILN,FROM,TO",
      split = ",",
      description = "A kiln that cannot be used from one time to another.")
  private List<String> outOfOrder = List.of();

  @Option(
      names = "--order",
      paramLabel = "LIST",
      description = "More batches (CSV or JSON), with the days they are due.")
  private Path order;

  /** One change or several, one after another; the first that is refused ends it. */
  interface Wish {
    WeekChange of(WeekRequest request);
  }

  /**
   * What is wished, tried on what is asked of a week, so that nothing is planned for a wish that
   * makes no sense; empty when it makes none, which is said.
   */
  Optional<Wish> wish(WeekRequest request, Reading reading, PrintStream err) {
    List<Wish> wishes = new ArrayList<>();
    if (order != null) {
      wishes.add(ordered(reading.take(BatchListReader.read(order, request.studio()))));
    }
    try {
      if (!outOfOrder.isEmpty()) {
        wishes.add(broken());
      }
      if (!extra.isEmpty()) {
        wishes.add(added());
      }
    } catch (DateTimeParseException unreadable) {
      wishes.add(
          refused(
              "'"
                  + unreadable.getParsedString()
                  + "' is not a day with a time. Write it as 2026-06-01T08:00."));
    }
    if (wishes.isEmpty()) {
      wishes.add(refused("Say what changes: --extra, --out-of-order or --order."));
    }
    if (all(wishes, request) instanceof WeekChange.Refused refused) {
      err.println(refused.sentence());
      return Optional.empty();
    }
    return Optional.of(on -> all(wishes, on));
  }

  private static WeekChange all(List<Wish> wishes, WeekRequest request) {
    WeekChange change = new WeekChange.Possible(request);
    for (Wish wish : wishes) {
      change =
          change instanceof WeekChange.Possible possible ? wish.of(possible.request()) : change;
    }
    return change;
  }

  private static Wish refused(String sentence) {
    return request -> new WeekChange.Refused(sentence);
  }

  private static Wish ordered(Optional<List<Batch>> more) {
    if (more.isEmpty()) {
      return refused("The order could not be read.");
    }
    List<WareLine> lines =
        more.get().stream()
            .map(batch -> new WareLine(batch, Optional.empty(), Optional.empty()))
            .toList();
    return request -> ChangeAWeek.order(request, lines);
  }

  private Wish broken() {
    if (outOfOrder.size() != 3) {
      return refused("--out-of-order takes three things: KILN,FROM,TO.");
    }
    LocalDateTime from = LocalDateTime.parse(outOfOrder.get(1));
    LocalDateTime to = LocalDateTime.parse(outOfOrder.get(2));
    return to.isAfter(from)
        ? request -> ChangeAWeek.outOfOrder(request, outOfOrder.get(0), new Span(from, to))
        : refused("--out-of-order: the later time comes last.");
  }

  private Wish added() {
    if (extra.size() != 3) {
      return refused("--extra takes three things: KILN,PROGRAM,TIME.");
    }
    LocalDateTime loads = LocalDateTime.parse(extra.get(2));
    return request -> ChangeAWeek.addFiring(request, extra.get(0), extra.get(1), loads);
  }
}
