package shelfful.bench;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Every run as a line of CSV. */
final class RunSheet {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader(
              "instance",
              "method",
              "seed",
              "listed",
              "pieces",
              "worth",
              "must_go_waiting",
              "layers",
              "most_pieces",
              "most_worth",
              "first_ms",
              "near_ms",
              "ms",
              "asked",
              "from_memory",
              "relaxings",
              "peak_heap_mb")
          .get();

  private RunSheet() {}

  static void write(Path file, List<Result> results) throws IOException {
    try (Writer writer = Files.newBufferedWriter(file);
        CSVPrinter printer = FORMAT.print(writer)) {
      for (Result result : results) {
        for (Run run : result.runs()) {
          print(printer, result, run);
        }
      }
    }
  }

  private static void print(CSVPrinter printer, Result result, Run run) throws IOException {
    Figures figures = run.figures();
    Effort effort = run.effort();
    Optional<Limit> limit = result.limit();
    printer.printRecord(
        run.subject(),
        run.method(),
        run.seed(),
        result.listed(),
        figures.pieces(),
        figures.worth(),
        figures.mustGoWaiting(),
        figures.layers(),
        limit.map(Limit::pieces).orElse(null),
        limit.map(Limit::worth).orElse(null),
        orNothing(effort.firstMillis()),
        orNothing(effort.nearMillis()),
        effort.millis(),
        effort.work().asked(),
        effort.work().fromMemory(),
        effort.work().relaxings(),
        effort.heapMegabytes());
  }

  private static Object orNothing(OptionalLong value) {
    return value.isPresent() ? value.getAsLong() : null;
  }
}
