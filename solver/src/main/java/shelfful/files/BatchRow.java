package shelfful.files;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import shelfful.measure.Cone;
import shelfful.measure.ConeText;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/**
 * One row of a table of batches. Forms and glazes are named by id or by name; capitals do not
 * count.
 */
final class BatchRow {
  /**
   * Spreadsheets write 12 as 12.0 or 12,0 at times; nothing else with a decimal sign is a count.
   */
  private static final Pattern COUNT = Pattern.compile("(-?[0-9]{1,9})(?:[.,]0{1,2})?");

  private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1");
  private static final Set<String> NO = Set.of("no", "n", "false", "0");

  private final BatchHeader header;
  private final CsvTable.Row row;
  private final Studio studio;
  private final Problems problems;

  BatchRow(BatchHeader header, CsvTable.Row row, Studio studio, Problems problems) {
    this.header = header;
    this.row = row;
    this.studio = studio;
    this.problems = problems;
  }

  /** The batch, or empty with every reason noted. */
  Optional<Batch> read() {
    int faultsBefore = problems.faults();
    noteSurplusCells();
    String id = cell(BatchColumn.BATCH, FileName::id).orElse("line-" + row.line());
    String form = required(BatchColumn.FORM, this::form).orElse("");
    Optional<String> glaze = cell(BatchColumn.GLAZE, this::glaze);
    int quantity = required(BatchColumn.QUANTITY, text -> count(text, Batch.MOST_PIECES)).orElse(1);
    Stage stage =
        cell(BatchColumn.STAGE, text -> FileValue.choice(text, Stage.class)).orElse(Stage.GLAZED);
    Optional<Cone> cone = cell(BatchColumn.CONE, ConeText::read);
    boolean mustGo = cell(BatchColumn.MUST_GO, BatchRow::flag).orElse(false);
    int priority =
        cell(BatchColumn.PRIORITY, text -> count(text, Batch.HIGHEST_PRIORITY)).orElse(1);
    Optional<LocalDate> due = cell(BatchColumn.DUE, FileValue::day);
    Optional<String> order = cell(BatchColumn.ORDER, FileName::name);
    Optional<String> set = cell(BatchColumn.SET, FileName::name);
    LidPlace lid =
        cell(BatchColumn.LID, text -> FileValue.choice(text, LidPlace.class)).orElse(LidPlace.ON);
    return problems.faults() > faultsBefore
        ? Optional.empty()
        : Optional.of(
            new Batch(
                id, form, glaze, quantity, stage, cone, mustGo, priority, due, order, set, lid));
  }

  private void noteSurplusCells() {
    List<String> cells = row.cells();
    boolean surplus =
        cells.size() > header.width()
            && cells.subList(header.width(), cells.size()).stream()
                .anyMatch(cell -> !cell.isEmpty());
    if (surplus) {
      problems.add(
          "line " + row.line(),
          "",
          "The row has " + cells.size() + " cells, the header " + header.width() + ".",
          "Put a cell with a comma in it between quotation marks.");
    }
  }

  private <T> Optional<T> required(BatchColumn column, Function<String, TextReading<T>> meaning) {
    if (text(column).isEmpty()) {
      problems.add(where(column), column.heading(), "The cell is empty.", "Fill it in.");
    }
    return cell(column, meaning);
  }

  private <T> Optional<T> cell(BatchColumn column, Function<String, TextReading<T>> meaning) {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    TextReading<T> reading = meaning.apply(text);
    if (reading instanceof TextReading.Refused<T> refused) {
      problems.add(where(column), column.heading(), refused.wrong(), refused.mend());
    }
    return reading.value();
  }

  private String text(BatchColumn column) {
    Integer at = header.columns().get(column);
    return at == null || at >= row.cells().size() ? "" : row.cells().get(at);
  }

  private String where(BatchColumn column) {
    return "line " + row.line() + ", column " + (header.columns().get(column) + 1);
  }

  private TextReading<String> form(String typed) {
    return named(
        typed,
        "form",
        studio.forms().stream().map(form -> new Named(form.id(), form.name())).toList());
  }

  private TextReading<String> glaze(String typed) {
    return named(
        typed,
        "glaze",
        studio.glazes().stream().map(glaze -> new Named(glaze.id(), glaze.name())).toList());
  }

  private static TextReading<String> named(String typed, String what, List<Named> known) {
    String key = FileName.key(typed.length() > 200 ? typed.substring(0, 200) : typed);
    Optional<String> byId =
        known.stream().map(Named::id).filter(id -> FileName.key(id).equals(key)).findFirst();
    List<String> byName =
        known.stream().filter(one -> FileName.key(one.name()).equals(key)).map(Named::id).toList();
    if (byId.isPresent()) {
      return new TextReading.Understood<>(byId.get());
    }
    if (byName.size() == 1) {
      return new TextReading.Understood<>(byName.get(0));
    }
    return new TextReading.Refused<>(
        byName.isEmpty()
            ? "The studio has no " + what + " " + Shown.quoted(typed) + "."
            : "The studio has several of the name " + Shown.quoted(typed) + ".",
        NearMiss.advice(typed, known.stream().map(Named::id).toList()));
  }

  private static TextReading<Integer> count(String text, int most) {
    var parts = COUNT.matcher(text);
    if (!parts.matches()) {
      return new TextReading.Refused<>(
          Shown.quoted(text) + " is not a whole number.", "Write digits only, such as 12.");
    }
    int value = Integer.parseInt(parts.group(1));
    return value < 1 || value > most
        ? new TextReading.Refused<>(
            value + " is out of range.", "It must be from 1 to " + most + ".")
        : new TextReading.Understood<>(value);
  }

  private static TextReading<Boolean> flag(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    if (YES.contains(plain) || NO.contains(plain)) {
      return new TextReading.Understood<>(YES.contains(plain));
    }
    return new TextReading.Refused<>(
        Shown.quoted(text) + " is neither yes nor no.", "Write yes or no.");
  }

  private record Named(String id, String name) {}
}
