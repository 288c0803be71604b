package shelfful.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shelfful.app.KeepFirings;
import shelfful.files.SaveFailed;
import shelfful.files.ShortText;
import shelfful.measure.TextReading;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/** Adds results of pieces to a firing. */
@Command(
    name = "unpack",
    description = "Adds how pieces came out: from the phone page's note, or piece by piece.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  shelfful record unpack firings/2026-06-01-7K3QM2.firing.json unpacking.txt",
      "  shelfful record unpack firings/2026-06-01-7K3QM2.firing.json --piece"
          + " \"B01-003=second:crawled\" --rest-good"
    })
final class RecordUnpackCommand implements Callable<Integer> {
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(index = "0", paramLabel = "FIRING", description = "The file of the firing.")
  private Path firingFile;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "NOTE",
      description = "The note from the phone page, saved as a file.")
  private Path note;

  @Option(
      names = "--piece",
      paramLabel = "PIECE=GRADE[:CAUSE]",
      description = "One piece: good, second or lost, and why; may be given again.")
  private Map<String, String> pieces = new LinkedHashMap<>();

  @Option(names = "--rest-good", description = "Every piece without a result is good.")
  private boolean restGood;

  RecordUnpackCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws SaveFailed {
    Optional<UnpackedFiring> firing = new Reading(err).take(KeepFirings.open(firingFile));
    if (firing.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    Optional<List<PieceResult>> results = results(firing.get());
    if (results.isEmpty()) {
      return ExitCodes.BAD_INPUT;
    }
    KeepFirings.add(results.get(), firingFile);
    out.println(results.get().size() + " results added to " + firing.get().record().id() + ".");
    return ExitCodes.DONE;
  }

  private Optional<List<PieceResult>> results(UnpackedFiring firing) {
    List<PieceResult> results = new ArrayList<>();
    if (note != null) {
      Optional<List<PieceResult>> noted =
          new Reading(err).take(KeepFirings.fromNote(note, firing.record()));
      if (noted.isEmpty()) {
        return Optional.empty();
      }
      results.addAll(noted.get());
    }
    for (Map.Entry<String, String> one : pieces.entrySet()) {
      Optional<PieceResult> result = result(one.getKey(), one.getValue(), firing.record());
      if (result.isEmpty()) {
        return Optional.empty();
      }
      results.add(result.get());
    }
    if (restGood) {
      rest(new UnpackedFiring(firing.record(), joined(firing.results(), results)), results);
    }
    return Optional.of(results);
  }

  private static List<PieceResult> joined(List<PieceResult> before, List<PieceResult> now) {
    List<PieceResult> all = new ArrayList<>(before);
    all.addAll(now);
    return all;
  }

  private static void rest(UnpackedFiring known, List<PieceResult> results) {
    known.record().pieces().stream()
        .filter(piece -> known.result(piece.pieceId()).isEmpty())
        .forEach(
            piece -> results.add(new PieceResult(piece.pieceId(), Grade.GOOD, Optional.empty())));
  }

  private Optional<PieceResult> result(String piece, String told, FiringRecord record) {
    int colon = told.indexOf(':');
    String word = colon < 0 ? told : told.substring(0, colon);
    Optional<TextReading<String>> cause =
        Optional.of(colon < 0 ? "" : told.substring(colon + 1))
            .filter(text -> !text.isBlank())
            .map(ShortText::read);
    Optional<Grade> grade = grade(word);
    if (!record.holds(piece)) {
      err.println("--piece: no piece " + piece + " stood in this firing.");
    } else if (grade.isEmpty() || grade.get() == Grade.GOOD && cause.isPresent()) {
      err.println(
          "--piece: write " + piece + "=good, " + piece + "=second:crawled or " + piece + "=lost.");
    } else if (cause.orElse(null) instanceof TextReading.Refused<String> refused) {
      err.println("--piece " + piece + ", cause: " + refused.wrong() + " " + refused.mend());
    } else {
      return Optional.of(new PieceResult(piece, grade.get(), cause.flatMap(TextReading::value)));
    }
    return Optional.empty();
  }

  private static Optional<Grade> grade(String word) {
    String name = word.strip().toUpperCase(Locale.ROOT);
    for (Grade grade : Grade.values()) {
      if (grade.name().equals(name)) {
        return Optional.of(grade);
      }
    }
    return Optional.empty();
  }
}
