package shelfful.ui.firings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.FiringFolder;
import shelfful.app.KeepFirings;
import shelfful.app.LoadLimit;
import shelfful.app.MadeUpYear;
import shelfful.app.Opened;
import shelfful.inspect.InspectedLoad;
import shelfful.record.FiringCourse;
import shelfful.record.FiringRecord;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/**
 * The firings that are looked at: those of a folder, or a made-up year that no file holds and in
 * which nothing can be marked. Used on the screen's thread alone.
 */
public final class FiringBook {
  private static final Comparator<UnpackedFiring> LATEST_FIRST =
      Comparator.comparing((UnpackedFiring one) -> one.record().day())
          .thenComparing(one -> one.record().id())
          .reversed();

  private final Words words;
  private final TaskRunner tasks;
  private final Supplier<LocalDate> today;
  private final ReadOnlyObjectWrapper<FiringFolder> folder = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<List<UnpackedFiring>> firings =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<UnpackedFiring>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper madeUp = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private final PlanOfFiring plan;

  /**
   * Counts on with whatever puts other firings on the screen; an answer to anything before is late.
   */
  private int turn;

  /** Counts on with whatever is noted in a firing. */
  private int noted;

  /**
   * Nothing was read yet.
   *
   * @param folder where firings are kept
   * @param today the day a record is begun on
   */
  public FiringBook(Words words, TaskRunner tasks, FiringFolder folder, Supplier<LocalDate> today) {
    this.words = words;
    this.tasks = tasks;
    this.folder.set(folder);
    this.today = today;
    plan = new PlanOfFiring(tasks, fault -> tell("book.failed", fault));
  }

  /** The firings, the latest first. */
  public ReadOnlyObjectProperty<List<UnpackedFiring>> firings() {
    return firings.getReadOnlyProperty();
  }

  /** The firing that is looked at. */
  public ReadOnlyObjectProperty<Optional<UnpackedFiring>> chosen() {
    return chosen.getReadOnlyProperty();
  }

  /** Whether these firings never were. */
  public ReadOnlyBooleanProperty madeUp() {
    return madeUp.getReadOnlyProperty();
  }

  /** What came of the last thing done, and what could not be read. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** Says something by its key, with what stands in it. */
  public void tell(String key, Object... values) {
    told.set(words.of(key, values));
  }

  /** Where firings are kept. */
  public ReadOnlyObjectProperty<FiringFolder> folder() {
    return folder.getReadOnlyProperty();
  }

  /** Reads the firings of another folder from now on; nothing is noted in it of those before. */
  public void use(FiringFolder other) {
    clear();
    folder.set(other);
    read();
  }

  /** Reads every firing of the folder, in the background. */
  public void read() {
    lookAtOwn();
    FiringFolder from = folder.get();
    tell("book.reading", from.path());
    int mine = turn;
    int before = noted;
    tasks.start(from::all, kept -> take(mine, before, kept), fault -> failed(mine, fault));
  }

  /** What is on the screen from now on is of the folder, not made up. */
  private void lookAtOwn() {
    turn++;
    if (madeUp.get()) {
      clear();
      madeUp.set(false);
    }
  }

  private void clear() {
    plan.clear();
    firings.set(List.of());
    chosen.set(Optional.empty());
  }

  private void take(int mine, int before, KeepFirings.Kept kept) {
    if (mine == turn && before == noted) {
      show(kept.firings());
      List<String> lines = new ArrayList<>();
      lines.add(words.of("book.read", kept.firings().size(), folder.get().path()));
      lines.addAll(kept.notes());
      told.set(String.join("\n", lines));
    } else if (mine == turn) {
      // What was read may lack what was noted meanwhile.
      read();
    }
  }

  private void failed(int mine, Throwable fault) {
    if (mine == turn) {
      tell("book.failed", fault);
    }
  }

  /** Shows a year that was made up for a studio, in place of the folder's firings. */
  public void showMadeUp(Studio studio) {
    turn++;
    int mine = turn;
    clear();
    madeUp.set(true);
    tell("book.makingUp");
    tasks.start(
        () -> MadeUpYear.of(studio),
        year -> {
          if (mine == turn) {
            show(year);
            tell("book.madeUp");
          }
        },
        fault -> failed(mine, fault));
  }

  private void show(List<UnpackedFiring> others) {
    show(others, chosen.get().map(one -> one.record().id()).orElse(""));
  }

  private void show(List<UnpackedFiring> others, String id) {
    firings.set(others.stream().sorted(LATEST_FIRST).toList());
    choose(
        find(id)
            .or(() -> firings.get().stream().findFirst())
            .map(one -> one.record().id())
            .orElse(""));
  }

  private Optional<UnpackedFiring> find(String id) {
    return firings.get().stream().filter(one -> one.record().id().equals(id)).findFirst();
  }

  /** Looks at a firing; none has empty text. Its plan is read in the background. */
  public void choose(String id) {
    Optional<UnpackedFiring> found = find(id);
    // The plan of another firing goes before its pieces come.
    plan.lookAt(
        found.map(UnpackedFiring::record), Optional.of(folder.get()).filter(from -> !madeUp.get()));
    chosen.set(found);
  }

  /** The plan the chosen firing was loaded from, as soon as its copy has been read. */
  public ReadOnlyObjectProperty<Optional<InspectedLoad>> plan() {
    return plan.plan();
  }

  /** Begins the record of a load that is about to be fired, in the background. */
  public void begin(InspectedLoad load) {
    lookAtOwn();
    LocalDate day = today.get();
    FiringFolder into = folder.get();
    int mine = turn;
    int before = noted;
    tell("book.beginning");
    tasks.start(
        () -> {
          int limit = LoadLimit.of(load.load().request()).pieces();
          return new Begun(into, into.begin(load, day, Optional.of(limit)), into.all());
        },
        begun -> begun(before, begun),
        fault -> failed(mine, fault));
  }

  /** A record that was begun is told in any case, and shown where its folder is still looked at. */
  private void begun(int before, Begun begun) {
    if (begun.folder() == folder.get() && !madeUp.get()) {
      // Nothing that was asked before knows of the record.
      turn++;
      plan.clear();
      begun
          .id()
          .ifPresentOrElse(
              id -> show(begun.kept().firings(), id), () -> show(begun.kept().firings()));
      if (before != noted) {
        read();
      }
    }
    told.set(begun.told(words));
  }

  /** Keeps how the chosen firing went; false when it could not be kept, with the reason told. */
  public boolean note(FiringCourse course) {
    Optional<UnpackedFiring> now = open();
    if (now.isEmpty()) {
      return false;
    }
    FiringRecord record = now.get().record().with(course);
    return kept(folder.get().note(record), new UnpackedFiring(record, now.get().results()));
  }

  /** Adds results to the chosen firing; false when they could not be kept, with the reason told. */
  public boolean add(List<PieceResult> results) {
    Optional<UnpackedFiring> now = open();
    if (now.isEmpty() || results.isEmpty()) {
      return false;
    }
    List<PieceResult> all = new ArrayList<>(now.get().results());
    all.addAll(results);
    UnpackedFiring with = new UnpackedFiring(now.get().record(), all);
    return kept(folder.get().add(now.get().record(), results), with);
  }

  /** The chosen firing, if something may be noted in it. */
  private Optional<UnpackedFiring> open() {
    if (madeUp.get()) {
      tell("book.notInMadeUp");
      return Optional.empty();
    }
    return chosen.get();
  }

  private boolean kept(Optional<String> trouble, UnpackedFiring with) {
    if (trouble.isPresent()) {
      told.set(trouble.get());
      return false;
    }
    noted++;
    String id = with.record().id();
    firings.set(
        firings.get().stream().map(one -> one.record().id().equals(id) ? with : one).toList());
    chosen.set(Optional.of(with));
    tell("book.kept", with.results().size(), with.record().pieces().size());
    return true;
  }

  /** Takes the note a phone gave back; all of it or nothing, with the reasons told. */
  public void takeNote(String name, byte[] note) {
    Optional<UnpackedFiring> now = open();
    if (now.isPresent()) {
      Opened<List<PieceResult>> read = FiringFolder.fromNote(name, note, now.get().record());
      if (read instanceof Opened.Ready<List<PieceResult>> ready) {
        if (add(ready.value())) {
          tell("book.noteTaken", ready.value().size());
        }
      } else {
        told.set(String.join("\n", ((Opened.Refused<List<PieceResult>>) read).sentences()));
      }
    }
  }
}
