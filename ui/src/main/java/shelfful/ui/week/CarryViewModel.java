package shelfful.ui.week;

import java.time.LocalDateTime;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.FiringPlace;
import shelfful.app.FiringPlaces;
import shelfful.ui.words.Words;
import shelfful.week.FiringTimes;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;

/**
 * The firing that is carried to another day or kiln, by mouse or keys, with what is in its way said
 * at every step. Nothing changes before it is set down.
 */
public final class CarryViewModel {
  private final WeekViewModel model;
  private final Words words;
  private final ReadOnlyObjectWrapper<Optional<FiringPlace>> place =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private Optional<FiringPlaces> places = Optional.empty();
  private Optional<WeekPlan> placesOf = Optional.empty();

  CarryViewModel(WeekViewModel model, Words words) {
    this.model = model;
    this.words = words;
  }

  /** Where it would stand; empty when none is carried. */
  public ReadOnlyObjectProperty<Optional<FiringPlace>> place() {
    return place.getReadOnlyProperty();
  }

  /** What there is to say of that place; empty text when none is carried. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** Carries a firing over a kiln so that it would be loaded at a moment. */
  public void carry(String firingId, String kilnId, LocalDateTime loads) {
    placesFor(firingId).ifPresent(all -> become(all.near(kilnId, loads)));
  }

  /** The places are those of the week as it was when the firing was taken up. */
  private Optional<FiringPlaces> placesFor(String firingId) {
    Optional<WeekPlan> plan = model.plan();
    boolean known =
        places.isPresent()
            && placesOf.equals(plan)
            && place.get().filter(one -> one.firingId().equals(firingId)).isPresent();
    if (!known) {
      placesOf = plan;
      places =
          plan.filter(one -> one.firing(firingId).isPresent())
              .map(one -> new FiringPlaces(one, firingId));
    }
    return places;
  }

  /** Carries the chosen firing to the next working day or back. */
  public void byDays(int direction) {
    Optional<PlannedFiring> firing = model.chosenFiring();
    if (firing.isPresent()) {
      placesFor(firing.get().id())
          .flatMap(all -> all.daysAway(kiln(firing.get()), loads(firing.get()), direction))
          .ifPresentOrElse(this::become, () -> told.set(words.of("week.noOtherDay")));
    }
  }

  /** Carries the chosen firing to the next kiln or back. */
  public void byKilns(int direction) {
    model
        .chosenFiring()
        .ifPresent(
            firing ->
                DayByDay.kilnAfter(model.plan().orElseThrow(), kiln(firing), direction)
                    .ifPresent(kiln -> carry(firing.id(), kiln, loads(firing))));
  }

  private String kiln(PlannedFiring firing) {
    return carried(firing).map(FiringPlace::kilnId).orElse(firing.kilnId());
  }

  private LocalDateTime loads(PlannedFiring firing) {
    return carried(firing)
        .flatMap(FiringPlace::times)
        .map(FiringTimes::loads)
        .orElse(firing.times().loads());
  }

  private Optional<FiringPlace> carried(PlannedFiring firing) {
    return place.get().filter(one -> one.firingId().equals(firing.id()));
  }

  private void become(FiringPlace other) {
    place.set(Optional.of(other));
    told.set(speech().of(other));
  }

  private PlaceWords speech() {
    return new PlaceWords(words, model.plan().orElseThrow().request().studio());
  }

  /** What is written on the calendar where it is carried. */
  String shortly() {
    return place.get().map(speech()::shortly).orElse("");
  }

  /** Whether a firing is carried. */
  public boolean carries() {
    return place.get().isPresent();
  }

  /** Sets it down: the rest is planned around it, or it goes back and the reason stays to read. */
  public void drop() {
    Optional<FiringPlace> at = place.get();
    String reason = told.get();
    putBack();
    if (at.isPresent() && !isWhereItWas(at.get())) {
      if (at.get().isAllowed()) {
        model.move(at.get());
      } else {
        told.set(words.of("week.notMoved", reason));
      }
    }
  }

  private boolean isWhereItWas(FiringPlace at) {
    return model
        .plan()
        .flatMap(plan -> plan.firing(at.firingId()))
        .filter(firing -> firing.kilnId().equals(at.kilnId()))
        .filter(firing -> at.times().filter(firing.times()::equals).isPresent())
        .isPresent();
  }

  /** The week has changed while it is carried; without its firing there is nothing to carry. */
  void follow() {
    place
        .get()
        .ifPresent(
            at -> {
              Optional<LocalDateTime> loads = at.times().map(FiringTimes::loads);
              boolean there = model.plan().flatMap(plan -> plan.firing(at.firingId())).isPresent();
              loads
                  .filter(time -> there)
                  .ifPresentOrElse(time -> carry(at.firingId(), at.kilnId(), time), this::putBack);
            });
  }

  /** Puts it back where it was. */
  public void putBack() {
    place.set(Optional.empty());
    told.set("");
  }

  /** Puts it back unless it is this firing. */
  void leave(String firingId) {
    if (place.get().filter(one -> !one.firingId().equals(firingId)).isPresent()) {
      putBack();
    }
  }
}
