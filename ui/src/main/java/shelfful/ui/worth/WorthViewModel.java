package shelfful.ui.worth;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import shelfful.app.KeepABatchList;
import shelfful.app.OpenAList;
import shelfful.app.Opened;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.purchase.MonthlyFirings;
import shelfful.purchase.Purchase;
import shelfful.purchase.PurchaseStudy;
import shelfful.purchase.Worth;
import shelfful.studio.Studio;
import shelfful.ui.look.Decimals;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;
import shelfful.ware.Batch;

/**
 * Measuring what purchases are worth, without any widget: on lists that are chosen, in the
 * background, each purchase told as soon as it is measured. Used on the screen's thread alone.
 */
public final class WorthViewModel {
  private static final Comparator<Worth> MOST_FIRST =
      Comparator.comparing((Worth worth) -> -worth.gain().mean())
          .thenComparing(worth -> worth.purchase().words());

  private final Words words;
  private final TaskRunner tasks;
  private final Supplier<Studio> studio;
  private final Supplier<LocalDate> today;
  private final ObservableList<Listed> lists = FXCollections.observableArrayList();
  private final ObservableList<Worth> worths = FXCollections.observableArrayList();
  private final ReadOnlyBooleanWrapper measuring = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper method = new ReadOnlyStringWrapper("");
  private Optional<PurchaseStudy> running = Optional.empty();

  /**
   * No list is chosen yet.
   *
   * @param studio the lists are of, where no list has come with its own
   * @param today the day of the firings, against which due dates count
   */
  public WorthViewModel(
      Words words, TaskRunner tasks, Supplier<Studio> studio, Supplier<LocalDate> today) {
    this.words = words;
    this.tasks = tasks;
    this.studio = studio;
    this.today = today;
    told.set(words.of("worth.choose"));
  }

  /** The lists it is measured on. */
  public ObservableList<Listed> lists() {
    return lists;
  }

  /** What was measured, the most worth first. */
  public ObservableList<Worth> worths() {
    return worths;
  }

  /** Whether measuring goes on. */
  public ReadOnlyBooleanProperty measuring() {
    return measuring.getReadOnlyProperty();
  }

  /** How it stands. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** How the figures were come by; empty text before there are any. */
  public ReadOnlyStringProperty method() {
    return method.getReadOnlyProperty();
  }

  /** All lists are of one studio: that of the first. */
  private Studio studio() {
    return lists.isEmpty() ? studio.get() : lists.get(0).request().studio();
  }

  /** Adds the list of a plan that is at hand; only the first brings its studio with it. */
  public void add(String name, LoadRequest request) {
    if (!studio().equals(request.studio()) && !lists.isEmpty()) {
      told.set(words.of("worth.otherStudio", name));
      return;
    }
    lists.add(new Listed(name, request.keepingNothing()));
    told.set(words.of("worth.ready", lists.size()));
  }

  /** Adds a batch list from a file; one that cannot be read adds nothing, with the reasons told. */
  public void add(Path file) {
    String name = String.valueOf(file.getFileName());
    Opened<List<Batch>> opened = KeepABatchList.open(file, studio());
    if (opened instanceof Opened.Refused<List<Batch>> refused) {
      told.set(String.join("\n", refused.sentences()));
      return;
    }
    List<Batch> batches = ((Opened.Ready<List<Batch>>) opened).value();
    OpenAList.request(studio(), batches, today.get())
        .ifPresentOrElse(
            request -> add(name, request), () -> told.set(words.of("worth.nothing", name)));
  }

  /** Takes a list away again. */
  public void remove(int index) {
    if (index >= 0 && index < lists.size()) {
      lists.remove(index);
    }
  }

  /** Measures everything that can be bought. */
  public void measure(Wishes wishes) {
    stop();
    Optional<List<Purchase>> purchases = purchases(wishes.thinner());
    boolean money = !wishes.firings().isBlank() || !wishes.cost().isBlank();
    Optional<MonthlyFirings> month = month(wishes);
    if (lists.isEmpty()) {
      told.set(words.of("worth.choose"));
    } else if (money && month.isEmpty()) {
      told.set(words.of("worth.noNumber"));
    } else {
      purchases.ifPresent(all -> measure(all, month, wishes.thoroughness()));
    }
  }

  private Optional<List<Purchase>> purchases(String thinner) {
    String kiln = lists.isEmpty() ? "" : lists.get(0).request().firing().kilnId();
    List<Purchase> all = new ArrayList<>(Purchase.usual(studio(), kiln));
    if (!thinner.isBlank()) {
      Optional<Length> length =
          LengthText.read(thinner, studio().unit()).value().filter(Length::isPositive);
      if (length.isEmpty()) {
        told.set(words.of("worth.noLength", thinner.strip()));
        return Optional.empty();
      }
      all.addAll(Purchase.thinner(studio(), kiln, length.get()));
    }
    return Optional.of(all);
  }

  private static Optional<MonthlyFirings> month(Wishes wishes) {
    OptionalDouble firings = Decimals.read(wishes.firings());
    OptionalDouble cost = Decimals.read(wishes.cost());
    return firings.isPresent() && cost.isPresent()
        ? Optional.of(new MonthlyFirings(firings.getAsDouble(), cost.getAsDouble()))
        : Optional.empty();
  }

  private void measure(
      List<Purchase> purchases, Optional<MonthlyFirings> month, Thoroughness thoroughness) {
    PurchaseStudy study =
        new PurchaseStudy(lists.stream().map(Listed::request).toList(), thoroughness.effort());
    running = Optional.of(study);
    measuring.set(true);
    worths.clear();
    int all = purchases.size();
    told.set(words.of("worth.measuring", 0, all));
    method.set(
        words.of(
            "worth.method",
            lists.size(),
            thoroughness.effort().seeds(),
            thoroughness.effort().steps()));
    tasks.start(
        () -> study.measure(purchases, month, worth -> tasks.show(() -> add(study, worth, all))),
        measured -> ended(study, measured.size() == all),
        fault -> failed(study, fault));
  }

  private boolean isPast(PurchaseStudy study) {
    return running.filter(now -> now == study).isEmpty();
  }

  private void add(PurchaseStudy study, Worth worth, int all) {
    if (!isPast(study)) {
      worths.setAll(among(worths, worth));
      told.set(words.of("worth.measuring", worths.size(), all));
    }
  }

  /** One more in its place. */
  static List<Worth> among(List<Worth> others, Worth worth) {
    List<Worth> sorted = new ArrayList<>(others);
    sorted.add(worth);
    sorted.sort(MOST_FIRST);
    return List.copyOf(sorted);
  }

  private void ended(PurchaseStudy study, boolean complete) {
    if (!isPast(study)) {
      measuring.set(false);
      long clear = worths.stream().filter(worth -> worth.gain().isClear()).count();
      double now = worths.isEmpty() ? 0 : worths.get(0).piecesNow();
      String ending = complete ? "worth.measured" : "worth.stopped";
      told.set(words.of(ending, worths.size(), clear) + " " + words.of("worth.now", now));
    }
  }

  private void failed(PurchaseStudy study, Throwable fault) {
    if (!isPast(study)) {
      measuring.set(false);
      told.set(words.of("worth.failed", fault));
    }
  }

  /** Ends after the purchase it is at; what was measured stays. */
  public void stop() {
    running.ifPresent(PurchaseStudy::stop);
  }
}
