package shelfful.ui.week;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.AlterAWeek;
import shelfful.app.ChangeAWeek;
import shelfful.app.FiringPlace;
import shelfful.review.InspectedWeek;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * The week on the screen and what can be done with it, without any widget. Used on the screen's
 * thread alone.
 */
public final class WeekViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final WeekSteps steps = new WeekSteps();
  private final WeekPlanning planning;
  private final CarryViewModel carry;
  private final WhatIfViewModel whatIf;
  private final ReadOnlyObjectWrapper<Optional<ShownWeek>> shown =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper chosen = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper state = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");

  /**
   * Shows nothing yet.
   *
   * @param length how long each planning lasts; empty for the effort of what is asked
   */
  public WeekViewModel(Words words, TaskRunner tasks, Optional<Duration> length) {
    this.words = words;
    this.tasks = tasks;
    planning = new WeekPlanning(tasks, length);
    carry = new CarryViewModel(this, words);
    whatIf = new WhatIfViewModel(this, words, planning);
    steps.now().addListener((property, was, is) -> is.ifPresent(this::show));
    planning.goesOn().addListener(changed -> say());
    say();
  }

  /** What is shown; empty before the first week. */
  ReadOnlyObjectProperty<Optional<ShownWeek>> shown() {
    return shown.getReadOnlyProperty();
  }

  /** The id of the chosen firing; empty text when none is. */
  public ReadOnlyStringProperty chosen() {
    return chosen.getReadOnlyProperty();
  }

  /** How things stand, in a line. */
  public ReadOnlyStringProperty state() {
    return state.getReadOnlyProperty();
  }

  /** What went wrong or could not be done; empty text when nothing. */
  public ReadOnlyStringProperty notice() {
    return notice.getReadOnlyProperty();
  }

  /** Whether a planning goes on. */
  public ReadOnlyBooleanProperty planning() {
    return planning.goesOn();
  }

  WeekSteps steps() {
    return steps;
  }

  /** The firing that is moved by hand. */
  public CarryViewModel carry() {
    return carry;
  }

  /** Trials of what would come of a change. */
  public WhatIfViewModel whatIf() {
    return whatIf;
  }

  /** The week as it is now. */
  public Optional<InspectedWeek> week() {
    return steps.now().get();
  }

  Optional<WeekPlan> plan() {
    return week().map(InspectedWeek::plan);
  }

  private void show(InspectedWeek week) {
    ShownWeek next = ShownWeek.of(week, words);
    if (!next.has(chosen.get())) {
      chosen.set(week.plan().firings().stream().findFirst().map(PlannedFiring::id).orElse(""));
    }
    shown.set(Optional.of(next));
    carry.follow();
    say();
  }

  private void say() {
    String counts =
        plan()
            .map(
                plan ->
                    words.of(
                        "week.state",
                        plan.firings().size(),
                        TotalWords.late(plan),
                        TotalWords.waiting(plan)))
            .orElse(words.of("week.stateEmpty"));
    state.set(planning.goesOn().get() ? words.of("week.statePlanning", counts) : counts);
  }

  void tell(String sentence) {
    notice.set(sentence);
  }

  void tellNothingIn() {
    tell(words.of("week.nothingToPrint", chosen.get()));
  }

  void failed(Throwable fault) {
    tell(words.of("notice.fault", fault));
  }

  /** Shows a finished week in place of the one before. */
  public void begin(InspectedWeek week) {
    leave();
    steps.begin(week);
  }

  /** Plans a week from nothing, in place of the one before. */
  public void plan(WeekRequest request) {
    leave();
    planning.start(request, new FirstPlan(this, words));
  }

  /** Whatever was begun is not listened to any more. */
  private void leave() {
    planning.leave();
    carry.putBack();
    whatIf.forget();
    tell("");
  }

  /** Ends the planning, if any, within a second; the best week stays. */
  public void stop() {
    planning.stop();
  }

  /** Chooses a firing; one that the week does not have is passed over. */
  public void choose(String firingId) {
    if (shown.get().filter(one -> one.has(firingId)).isPresent()) {
      carry.leave(firingId);
      chosen.set(firingId);
    }
  }

  /** Chooses the firing that is loaded so many firings later. */
  public void chooseAfter(int firings) {
    List<String> ids =
        plan().stream().flatMap(p -> p.firings().stream()).map(PlannedFiring::id).toList();
    int wanted = ids.indexOf(chosen.get()) + firings;
    if (wanted >= 0 && wanted < ids.size()) {
      choose(ids.get(wanted));
    }
  }

  /** Chooses the first firing of the next day (or the day before) on which one is loaded. */
  public void chooseDayAfter(int direction) {
    DayByDay.from(plan(), chosen.get(), direction).ifPresent(this::choose);
  }

  /** Chooses the firing of the next kiln (or the one before) that is loaded nearest in time. */
  public void chooseKilnAfter(int direction) {
    DayByDay.inOtherKiln(plan(), chosen.get(), direction).ifPresent(this::choose);
  }

  Optional<PlannedFiring> chosenFiring() {
    return plan().flatMap(plan -> plan.firing(chosen.get()));
  }

  /** Freezes the chosen firing, or lets it go where it is held. */
  public void freezeOrRelease() {
    chosenFiring()
        .ifPresent(
            firing -> {
              boolean free = firing.hold() == Hold.FREE;
              String name = words.of(free ? "week.step.frozen" : "week.step.released", firing.id());
              alter(name, plan -> AlterAWeek.hold(plan, firing.id(), free ? Hold.ALL : Hold.FREE));
            });
  }

  /** What can be made of a week at once. */
  private interface Alteration {
    Optional<InspectedWeek> of(WeekPlan plan);
  }

  private void alter(String name, Alteration alteration) {
    leave();
    InspectedWeek before = week().orElseThrow();
    tasks.start(
        () -> alteration.of(before.plan()),
        after ->
            ifStill(
                before,
                () ->
                    after.ifPresentOrElse(
                        week -> steps.note(name, week), () -> tell(words.of("week.cannotBeHeld")))),
        this::failed);
  }

  private void ifStill(InspectedWeek before, Runnable then) {
    if (week().filter(now -> now == before).isPresent()) {
      then.run();
    }
  }

  /**
   * Moves a firing and plans the rest around it. Where the rest can stay as it is, that is shown at
   * once.
   */
  void move(FiringPlace place) {
    leave();
    InspectedWeek before = week().orElseThrow();
    String when = new Moments(words).moment(place.times().orElseThrow().loads());
    String name = words.of("week.step.moved", place.firingId(), when);
    Supplier<Optional<InspectedWeek>> alone = () -> AlterAWeek.move(before.plan(), place);
    tasks.start(
        alone,
        quick ->
            ifStill(
                before,
                () -> {
                  quick.ifPresent(week -> steps.note(name, week));
                  planAround(name, quick.isPresent(), AlterAWeek.around(before.plan(), place));
                }),
        this::failed);
  }

  /** Plans again around everything that is held. */
  public void planAgain() {
    leave();
    plan().ifPresent(p -> planAround(words.of("week.step.again"), false, ChangeAWeek.again(p)));
  }

  private void planAround(String name, boolean noted, WeekRequest request) {
    planning.start(request, new PlanAround(this, words, name, noted));
  }

  /** Takes a trial over as a step. */
  void takeOver(String name, InspectedWeek week) {
    planning.leave();
    steps.note(name, week);
  }

  /** Takes the last step back. */
  public void undo() {
    leave();
    steps.undo();
  }

  /** Does the step again that was taken back last. */
  public void redo() {
    leave();
    steps.redo();
  }
}
