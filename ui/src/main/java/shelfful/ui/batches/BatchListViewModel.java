package shelfful.ui.batches;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import shelfful.app.BatchLines;
import shelfful.app.KeepABatchList;
import shelfful.app.Opened;
import shelfful.app.PastedTable;
import shelfful.studio.Studio;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;
import shelfful.ware.Batch;

/** A batch list being written, without any widget. Used on the screen's thread alone. */
public final class BatchListViewModel {
  private final Words words;
  private final Steps steps;
  private final ObservableList<BatchLines.Line> lines = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper counts = new ReadOnlyStringWrapper();
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
  private Studio studio;
  private BatchFaults faults;
  private List<List<String>> rows = List.of();
  private List<List<String>> saved = List.of();
  private Optional<Path> file = Optional.empty();

  /**
   * Begins with an empty list.
   *
   * @param studio whose forms and glazes the list may name
   * @param steps of the whole desk, among which every change is noted
   */
  public BatchListViewModel(Words words, Studio studio, Steps steps) {
    this.words = words;
    this.studio = studio;
    this.faults = new BatchFaults(words, studio);
    this.steps = steps;
    show(List.of());
  }

  /** The rows with what is wrong with each. */
  public ObservableList<BatchLines.Line> lines() {
    return FXCollections.unmodifiableObservableList(lines);
  }

  /** How many rows and pieces there are, and how many rows are wrong. */
  public ReadOnlyStringProperty counts() {
    return counts.getReadOnlyProperty();
  }

  /** What the person must know; empty when there is nothing. */
  public ReadOnlyStringProperty message() {
    return message.getReadOnlyProperty();
  }

  /** Everything done at the desk, these changes among it. */
  public Steps steps() {
    return steps;
  }

  /** Whether there are changes that no file holds. */
  public ReadOnlyBooleanProperty unsaved() {
    return unsaved.getReadOnlyProperty();
  }

  /** The file it was opened from or saved in last, if any. */
  public Optional<Path> file() {
    return file;
  }

  /** The studio whose forms and glazes the list names. */
  public Studio studio() {
    return studio;
  }

  /** The words of the person's language. */
  public Words words() {
    return words;
  }

  /** The batches of all rows that are right. */
  public List<Batch> batches() {
    return lines.stream().flatMap(line -> line.batch().stream()).toList();
  }

  /** Reads the list again with another studio's forms and glazes; nothing is changed in it. */
  public void use(Studio other) {
    studio = other;
    faults = new BatchFaults(words, other);
    show(rows);
  }

  /** Puts rows in place of those shown, as a history does; this is no edit. */
  public void show(List<List<String>> other) {
    rows = List.copyOf(other);
    List<BatchLines.Line> read = BatchLines.read(rows, studio);
    // Only what differs is set, so that the table keeps its place and what is being typed.
    for (int i = 0; i < Math.min(read.size(), lines.size()); i++) {
      if (!lines.get(i).equals(read.get(i))) {
        lines.set(i, read.get(i));
      }
    }
    if (lines.size() > read.size()) {
      lines.remove(read.size(), lines.size());
    }
    lines.addAll(read.subList(lines.size(), read.size()));
    int pieces = batches().stream().mapToInt(Batch::quantity).sum();
    long wrong = lines.stream().filter(line -> line.batch().isEmpty()).count();
    counts.set(
        wrong == 0
            ? words.of("batches.counts", rows.size(), pieces)
            : words.of("batches.countsWrong", rows.size(), pieces, wrong));
    unsaved.set(!rows.equals(saved));
  }

  private void take(String name, List<List<String>> after) {
    if (!after.equals(rows)) {
      List<List<String>> before = rows;
      List<List<String>> kept = List.copyOf(after);
      show(kept);
      String told = words.of("edit.inList", name);
      steps.note(new Steps.Step(this, told, () -> show(before), () -> show(kept)));
    }
  }

  /** Puts a text into a cell, whether it is right or not; what is wrong is told at the cell. */
  public void edit(int row, String heading, String text) {
    int column = BatchLines.headings().indexOf(heading);
    if (row < 0 || row >= rows.size() || column < 0) {
      return;
    }
    List<String> cells = new ArrayList<>(rows.get(row));
    cells.set(column, text.strip());
    List<List<String>> after = new ArrayList<>(rows);
    after.set(row, List.copyOf(cells));
    take(words.of("batches.edited", words.of("column." + heading), row + 1), after);
  }

  /** Adds an empty row at the end; returns its number from 0. */
  public int add() {
    List<String> cells = new ArrayList<>(Collections.nCopies(BatchLines.headings().size(), ""));
    cells.set(0, new FreeIds(rows).free(""));
    List<List<String>> after = new ArrayList<>(rows);
    after.add(List.copyOf(cells));
    take(words.of("batches.added"), after);
    return rows.size() - 1;
  }

  /** Copies rows to below the last of them; the copies get ids of their own. */
  public void duplicate(Collection<Integer> chosen) {
    List<Integer> known = inList(chosen);
    if (known.isEmpty()) {
      return;
    }
    FreeIds ids = new FreeIds(rows);
    List<List<String>> copies = new ArrayList<>();
    for (int row : known) {
      copies.add(withFreeId(rows.get(row), ids));
    }
    List<List<String>> after = new ArrayList<>(rows);
    after.addAll(known.get(known.size() - 1) + 1, copies);
    take(words.of("batches.duplicated", known.size()), after);
  }

  /** Takes rows away. */
  public void delete(Collection<Integer> chosen) {
    List<Integer> known = inList(chosen);
    List<List<String>> after = new ArrayList<>(rows);
    for (int i = known.size() - 1; i >= 0; i--) {
      after.remove((int) known.get(i));
    }
    take(words.of("batches.deleted", known.size()), after);
  }

  private List<Integer> inList(Collection<Integer> chosen) {
    return new TreeSet<>(chosen).stream().filter(row -> row >= 0 && row < rows.size()).toList();
  }

  /** Adds rows at the end in one step; rows without an id, or with a taken one, get one. */
  public void paste(List<List<String>> more) {
    FreeIds ids = new FreeIds(rows);
    List<List<String>> after = new ArrayList<>(rows);
    for (List<String> row : more) {
      after.add(withFreeId(row, ids));
    }
    take(words.of("batches.pasted", more.size()), after);
  }

  private static List<String> withFreeId(List<String> row, FreeIds ids) {
    List<String> cells = new ArrayList<>(row);
    cells.set(0, ids.free(cells.get(0)));
    return List.copyOf(cells);
  }

  /** Takes the last change back, wherever it was made. */
  public void undo() {
    steps.undo();
  }

  /** Does the change again that was taken back last. */
  public void redo() {
    steps.redo();
  }

  /**
   * Opens a list; one that cannot be read leaves this one, with the reasons told. Rows of a table
   * that are wrong come in too, to be mended where they stand.
   *
   * @return the text of a table whose first row does not name its columns, to be looked at first
   */
  public Optional<String> open(Path from) {
    if (from.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
      took(KeepABatchList.open(from, studio))
          .ifPresent(found -> begin(from, found.stream().map(BatchLines::cells).toList()));
      return Optional.empty();
    }
    Optional<String> text = took(KeepABatchList.text(from));
    if (text.isEmpty()) {
      return Optional.empty();
    }
    PastedTable table = PastedTable.guess(text.get(), Map.of(), studio);
    if (!table.isBatchList()) {
      return text;
    }
    begin(from, table.asBatchRows());
    if (!table.leftAside().isEmpty()) {
      message.set(words.of("batches.leftAside", String.join(", ", table.leftAside())));
    }
    return Optional.empty();
  }

  private <T> Optional<T> took(Opened<T> opened) {
    if (opened instanceof Opened.Ready<T> ready) {
      message.set(String.join("\n", ready.notes()));
      return Optional.of(ready.value());
    }
    message.set(String.join("\n", ((Opened.Refused<T>) opened).sentences()));
    return Optional.empty();
  }

  private void begin(Path from, List<List<String>> found) {
    steps.forget(this);
    file = Optional.of(from);
    saved = found;
    show(found);
  }

  /** Saves the list; refused while a row is wrong, because a file of it would lose that row. */
  public void save(Path to) {
    if (lines.stream().anyMatch(line -> line.batch().isEmpty())) {
      message.set(words.of("batches.mendFirst"));
      return;
    }
    Optional<String> failure = KeepABatchList.save(batches(), to);
    message.set(failure.orElse(words.of("batches.saved", to.getFileName())));
    if (failure.isEmpty()) {
      file = Optional.of(to);
      saved = rows;
      unsaved.set(false);
    }
  }

  /** Tells the person something in the words of a key. */
  public void tell(String key) {
    message.set(words.of(key));
  }

  /** Everything that is wrong, with its row and column, at most so many. */
  public List<String> faults(int most) {
    return faults(lines, most);
  }

  /** The same for lines that may come in. */
  List<String> faults(List<BatchLines.Line> others, int most) {
    return faults.told(others, most);
  }
}
