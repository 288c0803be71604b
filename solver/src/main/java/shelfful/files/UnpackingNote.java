package shelfful.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.measure.TextReading;
import shelfful.record.FiringRecord;
import shelfful.record.Grade;
import shelfful.record.PieceResult;

/**
 * The note that the phone page gives back after unpacking: a few lines of text that can be mailed,
 * copied or saved, with a check sum so that half a note is noticed. Nothing of a note is used
 * unless all of it is sound.
 *
 * <pre>
 * shelfful unpacking 1
 * plan 7K3QM2
 * B01-003 | second | crawled
 * B02-001 | lost
 * rest good
 * sum 1a2b3c4d
 * </pre>
 */
public final class UnpackingNote {
  private static final String FIRST = "shelfful unpacking 1";
  private static final String PLAN = "plan ";
  private static final String REST = "rest good";
  private static final String SUM = "sum ";
  private static final int LONGEST = 1 << 20;

  private final FiringRecord record;
  private final Problems problems;
  private final List<PieceResult> results = new ArrayList<>();
  private final Set<String> named = new HashSet<>();

  private UnpackingNote(FiringRecord record, Problems problems) {
    this.record = record;
    this.problems = problems;
  }

  /** The note of some results, as the phone page writes it. */
  public static String write(FiringRecord record, List<PieceResult> results) {
    StringBuilder text = new StringBuilder(FIRST + "\n" + PLAN + record.planMark() + "\n");
    for (PieceResult one : results) {
      text.append(one.pieceId()).append(" | ").append(FileValue.word(one.grade()));
      one.cause().ifPresent(cause -> text.append(" | ").append(cause.replace('|', '/')));
      text.append('\n');
    }
    return text + SUM + UnpackingLine.sum(text.toString()) + "\n";
  }

  /** Reads a note that was saved as a file. */
  public static ReadResult<List<PieceResult>> read(Path file, FiringRecord record) {
    Problems problems = new Problems(FileBytes.nameOf(file));
    Optional<byte[]> bytes = FileBytes.of(file, problems);
    return problems.result(bytes.flatMap(some -> results(some, record, problems)));
  }

  /**
   * Reads a note that is already at hand.
   *
   * @param name to call it by in problems
   */
  public static ReadResult<List<PieceResult>> read(String name, byte[] bytes, FiringRecord record) {
    Problems problems = new Problems(name);
    return problems.result(results(bytes, record, problems));
  }

  private static Optional<List<PieceResult>> results(
      byte[] bytes, FiringRecord record, Problems problems) {
    if (bytes.length > LONGEST) {
      problems.add("", "", "The note is larger than 1 MB.", "Check that it is the right file.");
      return Optional.empty();
    }
    return FileText.of(bytes, problems)
        .flatMap(text -> new UnpackingNote(record, problems).lines(text));
  }

  private Optional<List<PieceResult>> lines(String text) {
    List<String> lines =
        Arrays.stream(text.split("\r\n|\r|\n"))
            .map(String::strip)
            .filter(l -> !l.isEmpty())
            .toList();
    if (lines.size() < 3 || !lines.get(0).equals(FIRST)) {
      problems.add(
          "line 1",
          "",
          "This is no note of an unpacking.",
          "It begins with \"" + FIRST + "\"; copy it from the phone page from first to last line.");
      return Optional.empty();
    }
    if (!isWhole(lines) || !isOfThisPlan(lines.get(1))) {
      return Optional.empty();
    }
    for (int i = 2; i < lines.size() - 1; i++) {
      line(lines.get(i), "line " + (i + 1));
    }
    return problems.faults() == 0 ? Optional.of(List.copyOf(results)) : Optional.empty();
  }

  private boolean isWhole(List<String> lines) {
    String last = lines.get(lines.size() - 1);
    String body = String.join("\n", lines.subList(0, lines.size() - 1)) + "\n";
    if (last.equals(SUM + UnpackingLine.sum(body))) {
      return true;
    }
    problems.add(
        "line " + lines.size(),
        "sum",
        "The check sum does not agree: the note is not whole, or it was changed.",
        "Copy it again from the phone page, from first to last line.");
    return false;
  }

  private boolean isOfThisPlan(String line) {
    if (line.equals(PLAN + record.planMark())) {
      return true;
    }
    problems.add(
        "line 2",
        "plan",
        "The note is of another plan: " + Shown.quoted(line) + ", not " + record.planMark() + ".",
        "Name the firing that was loaded from that plan.");
    return false;
  }

  private void line(String line, String at) {
    if (line.equals(REST)) {
      record.pieces().stream()
          .filter(piece -> named.add(piece.pieceId()))
          .map(piece -> new PieceResult(piece.pieceId(), Grade.GOOD, Optional.empty()))
          .forEach(results::add);
      return;
    }
    String[] cells = line.split("\\|", 4);
    if (cells.length < 2 || cells.length > 3) {
      problems.add(at, "", Shown.quoted(line) + " is no result.", "Write piece | grade | cause.");
      return;
    }
    result(cells, at);
  }

  private void result(String[] cells, String at) {
    String piece = cells[0].strip();
    TextReading<Grade> grade = FileValue.choice(cells[1].strip(), Grade.class);
    Optional<TextReading<String>> cause =
        cells.length == 3 ? Optional.of(FileName.name(cells[2])) : Optional.empty();
    if (!record.holds(piece)) {
      problems.add(
          at,
          "piece",
          "No piece " + Shown.quoted(piece) + " stood in this firing.",
          "Name one of its pieces.");
    } else if (!named.add(piece)) {
      problems.add(at, "piece", "The piece " + piece + " is named twice.", "Keep one of the two.");
    } else if (grade instanceof TextReading.Refused<Grade> refused) {
      problems.add(at, "grade", refused.wrong(), refused.mend());
    } else if (cause.isPresent() && cause.get() instanceof TextReading.Refused<String> refused) {
      problems.add(at, "cause", refused.wrong(), refused.mend());
    } else {
      add(piece, grade.value().orElseThrow(), cause.flatMap(TextReading::value), at);
    }
  }

  private void add(String piece, Grade grade, Optional<String> cause, String at) {
    if (grade == Grade.GOOD && cause.isPresent()) {
      problems.add(
          at, "cause", "A good piece has no cause.", "Make it a second, or take the cause away.");
      return;
    }
    results.add(new PieceResult(piece, grade, cause));
  }
}
