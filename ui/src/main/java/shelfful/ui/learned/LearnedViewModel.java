package shelfful.ui.learned;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import shelfful.learning.CellRate;
import shelfful.learning.Flaw;
import shelfful.learning.KilnHabits;
import shelfful.learning.Sighting;
import shelfful.learning.Trait;
import shelfful.learning.ZoneSuggestion;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/**
 * What the firings of one kiln show, without any widget. Every look is worked out anew in the
 * background when the firings, the kiln or what counts as a flaw change. Used on the screen's
 * thread alone.
 */
public final class LearnedViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final ObservableValue<List<UnpackedFiring>> firings;
  private final StudioDoor door;
  private final ReadOnlyObjectWrapper<List<String>> kilns = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyStringWrapper kilnId = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Flaw> flaw = new ReadOnlyObjectWrapper<>(Flaw.SECOND_OR_LOST);
  private final ReadOnlyObjectWrapper<Learned> learned =
      new ReadOnlyObjectWrapper<>(Learned.NOTHING);
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private int turn;

  /**
   * Follows some firings.
   *
   * @param door to the studio that suggestions are accepted into
   */
  public LearnedViewModel(
      Words words,
      TaskRunner tasks,
      ObservableValue<List<UnpackedFiring>> firings,
      StudioDoor door) {
    this.words = words;
    this.tasks = tasks;
    this.firings = firings;
    this.door = door;
    firings.addListener((property, was, is) -> follow());
    follow();
  }

  /** The kilns there are firings of. */
  public ReadOnlyObjectProperty<List<String>> kilns() {
    return kilns.getReadOnlyProperty();
  }

  /** The kiln looked at; empty text where there is none. */
  public ReadOnlyStringProperty kilnId() {
    return kilnId.getReadOnlyProperty();
  }

  /** What is counted. */
  public ReadOnlyObjectProperty<Flaw> flaw() {
    return flaw.getReadOnlyProperty();
  }

  /** What was found. */
  public ReadOnlyObjectProperty<Learned> learned() {
    return learned.getReadOnlyProperty();
  }

  /** How much it rests on, or what came of accepting something. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** The studio, for the names of its things and for what its glazes wish. */
  ObservableValue<Studio> studio() {
    return door.studio();
  }

  private void follow() {
    List<String> all =
        firings.getValue().stream()
            .map(one -> one.record().firing().kilnId())
            .distinct()
            .sorted()
            .toList();
    kilns.set(all);
    if (!all.contains(kilnId.get())) {
      kilnId.set(all.stream().findFirst().orElse(""));
    }
    look();
  }

  /** Looks at another kiln. */
  public void chooseKiln(String id) {
    if (!id.equals(kilnId.get())) {
      kilnId.set(id);
      look();
    }
  }

  /** Counts something else from now on. */
  public void count(Flaw other) {
    if (other != flaw.get()) {
      flaw.set(other);
      look();
    }
  }

  private void look() {
    turn++;
    int mine = turn;
    String kiln = kilnId.get();
    Flaw counted = flaw.get();
    List<UnpackedFiring> all = firings.getValue();
    tasks.start(
        () -> of(all, kiln, counted),
        found -> {
          if (mine == turn) {
            learned.set(found);
            told.set(words.of("learned.told", found.pieces(), found.firings(), alarm()));
          }
        },
        fault -> told.set(words.of("learned.failed", fault)));
  }

  private static long alarm() {
    return Math.round(100 * KilnHabits.ALARM_LEVEL);
  }

  private static Learned of(List<UnpackedFiring> firings, String kiln, Flaw flaw) {
    List<UnpackedFiring> own =
        firings.stream().filter(one -> one.record().firing().kilnId().equals(kiln)).toList();
    List<Sighting> sightings = Sighting.of(own);
    List<CellRate> rates = KilnHabits.of(sightings, flaw, List.of(Trait.values()));
    return new Learned(flaw, sightings.size(), own.size(), rates, ZoneSuggestion.from(rates, flaw));
  }

  /** Whether the studio's glaze keeps out of the zone already, or the studio lacks the glaze. */
  public boolean changesNothing(ZoneSuggestion suggestion) {
    Studio now = door.studio().getValue();
    return suggestion.accepted(now).equals(now);
  }

  /** Makes a suggestion a wish of its glaze in the studio; it can be taken back. */
  public void accept(ZoneSuggestion suggestion, String name) {
    if (changesNothing(suggestion)) {
      told.set(words.of("learned.nothingToChange", name));
      return;
    }
    Optional<String> trouble = door.change(words.of("learned.step", name), suggestion::accepted);
    told.set(trouble.orElseGet(() -> words.of("learned.accepted", name)));
  }
}
