package shelfful.ui.why;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import shelfful.inspect.InspectedLoad;
import shelfful.remedy.Explanation;
import shelfful.remedy.Remedy;
import shelfful.remedy.RemedyEffort;
import shelfful.remedy.RemedySearch;
import shelfful.remedy.WaitingGroup;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/**
 * What waits in the load on the desk, why, and the remedies found by trying, without any widget.
 * Loads are tried in the background; another load on the desk ends that. Used on the screen's
 * thread alone.
 */
public final class WhyViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final Predicate<Remedy> taker;
  private final ObservableList<WaitingRow> rows = FXCollections.observableArrayList();

  /** Kept, because such a view listens weakly: one that nobody holds falls silent. */
  private final ObservableList<WaitingRow> rowsSeen =
      FXCollections.unmodifiableObservableList(rows);

  private final ReadOnlyBooleanWrapper searching = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private Optional<InspectedLoad> load = Optional.empty();
  private Optional<Running> running = Optional.empty();
  private String done = "";

  /**
   * Shows nothing yet.
   *
   * @param taker does a remedy, as one step that can be taken back; false when it could not
   */
  public WhyViewModel(Words words, TaskRunner tasks, Predicate<Remedy> taker) {
    this.words = words;
    this.tasks = tasks;
    this.taker = taker;
    told.set(words.of("why.noLoad"));
  }

  /** A search with its own sign to stop: a group left half tried must not look like a finished. */
  private static final class Running {
    private final RemedySearch search;
    private volatile boolean stopped;

    private Running(RemedySearch search) {
      this.search = search;
    }

    private void stop() {
      stopped = true;
      search.stop();
    }
  }

  /** What waits, in the order of the list. */
  public ObservableList<WaitingRow> rows() {
    return rowsSeen;
  }

  /** Whether loads are being tried. */
  public ReadOnlyBooleanProperty searching() {
    return searching.getReadOnlyProperty();
  }

  /** How the search stands, or what came of a remedy. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** The load looked at. */
  public Optional<InspectedLoad> load() {
    return load;
  }

  /** Looks at another load; empty when the desk has none that keeps the rules. */
  public void look(Optional<InspectedLoad> other) {
    if (other.map(InspectedLoad::load).equals(load.map(InspectedLoad::load))) {
      return;
    }
    stop();
    running = Optional.empty();
    searching.set(false);
    load = other;
    List<WaitingGroup> groups =
        other.map(InspectedLoad::load).map(WaitingGroup::of).orElse(List.of());
    rows.setAll(groups.stream().map(WaitingRow::of).toList());
    String next =
        other.isEmpty() ? "why.noLoad" : groups.isEmpty() ? "why.nothingWaits" : "why.ask";
    told.set((done + " " + words.of(next)).strip());
    done = "";
  }

  /** Looks for remedies for everything that waits. */
  public void search(boolean everyKind) {
    search(List.copyOf(rows), everyKind);
  }

  /** Looks for remedies for some of what waits. */
  public void search(List<WaitingRow> wanted, boolean everyKind) {
    stop();
    if (load.isEmpty() || wanted.isEmpty()) {
      return;
    }
    RemedyEffort usual = RemedyEffort.USUAL;
    RemedyEffort effort = everyKind ? usual.ofEveryKind() : usual;
    Running started = new Running(new RemedySearch(load.get(), effort));
    running = Optional.of(started);
    searching.set(true);
    told.set(words.of("why.searching", 0, wanted.size()));
    tasks.start(
        () -> tryAll(started, wanted),
        done -> ended(started, done, wanted.size()),
        fault -> failed(started, fault));
  }

  /** Away from the screen's thread. */
  private int tryAll(Running started, List<WaitingRow> wanted) {
    int done = 0;
    for (WaitingRow row : wanted) {
      if (!started.stopped) {
        tasks.show(() -> replace(started, row.group(), WaitingRow.Look.GOES_ON, Optional.empty()));
        Explanation found = started.search.explain(row.group());
        done += started.stopped ? 0 : 1;
        int count = done;
        WaitingRow.Look look = started.stopped ? WaitingRow.Look.STOPPED : WaitingRow.Look.DONE;
        tasks.show(
            () -> {
              replace(started, row.group(), look, Optional.of(found));
              tell(started, words.of("why.searching", count, wanted.size()));
            });
      }
    }
    return done;
  }

  private boolean isPast(Running one) {
    return running.filter(now -> now == one).isEmpty();
  }

  private void tell(Running from, String sentence) {
    if (!isPast(from)) {
      told.set(sentence);
    }
  }

  private void replace(
      Running from, WaitingGroup group, WaitingRow.Look look, Optional<Explanation> found) {
    if (isPast(from)) {
      return;
    }
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).group().equals(group)) {
        rows.set(i, new WaitingRow(group, look, found.or(rows.get(i)::explanation)));
      }
    }
  }

  private void ended(Running from, int done, int all) {
    if (!isPast(from)) {
      searching.set(false);
      told.set(words.of(done == all ? "why.searched" : "why.stopped", done, all));
    }
  }

  private void failed(Running from, Throwable fault) {
    if (!isPast(from)) {
      searching.set(false);
      rows.replaceAll(
          row -> row.look() == WaitingRow.Look.GOES_ON ? row.with(WaitingRow.Look.STOPPED) : row);
      told.set(words.of("why.failed", fault));
    }
  }

  /** Ends the search after the try it is at; what was found stays. */
  public void stop() {
    running.ifPresent(Running::stop);
  }

  /** Does a remedy; the load it leads to comes onto the desk, and undo brings this one back. */
  public void take(Remedy remedy) {
    stop();
    // Told together with what the next load has to say, which may be on the desk at once or later.
    done = words.of("why.taken", words.of("remedy", remedy.kind()));
    if (!taker.test(remedy)) {
      done = "";
      told.set(words.of("why.notTaken"));
    } else if (!done.isEmpty()) {
      told.set(done);
    }
  }
}
