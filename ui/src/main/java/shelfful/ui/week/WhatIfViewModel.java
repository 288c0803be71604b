package shelfful.ui.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.ChangeAWeek;
import shelfful.app.WeekChange;
import shelfful.app.WeekComparison;
import shelfful.review.InspectedWeek;
import shelfful.ui.words.Words;
import shelfful.week.OpenHours;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * Tries what would come of a change, beside the week as it is. Nothing changes before the trial is
 * taken over.
 */
public final class WhatIfViewModel {
  private final WeekViewModel model;
  private final Words words;
  private final WeekPlanning planning;
  private final ReadOnlyObjectWrapper<Optional<Trial>> trial =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");

  /**
   * What came of it.
   *
   * @param name what was changed, in words
   * @param before the week as it is
   * @param after the week with the change
   */
  public record Trial(String name, InspectedWeek before, InspectedWeek after) {
    /** Both in figures. */
    public WeekComparison comparison() {
      return WeekComparison.of(before.plan(), after.plan());
    }
  }

  WhatIfViewModel(WeekViewModel model, Words words, WeekPlanning planning) {
    this.model = model;
    this.words = words;
    this.planning = planning;
  }

  /** The trial that can be taken over; it grows better while planning goes on. */
  public ReadOnlyObjectProperty<Optional<Trial>> trial() {
    return trial.getReadOnlyProperty();
  }

  /** How the trial stands, or why there is none. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
  }

  /** One more firing of a program, loaded when work begins on a day, or would on a day off. */
  public void extraFiring(String kilnId, String programId, LocalDate day) {
    ask(
        words.of("week.step.extra", kiln(kilnId), programId, moments().day(day)),
        request ->
            ChangeAWeek.addFiring(request, kilnId, programId, opening(request, kilnId, day)));
  }

  /** On a day off the time of day at which the week begins. */
  private static LocalDateTime opening(WeekRequest request, String kilnId, LocalDate day) {
    LocalTime opens =
        request
            .kiln(kilnId)
            .flatMap(kiln -> kiln.calendar().open(day))
            .map(OpenHours::from)
            .orElse(request.start().toLocalTime());
    LocalDateTime at = day.atTime(opens);
    return at.isBefore(request.start()) ? request.start() : at;
  }

  /** A kiln that cannot be used from the first to the last day, both whole. */
  public void outOfOrder(String kilnId, LocalDate first, LocalDate last) {
    if (last.isBefore(first)) {
      told.set(words.of("week.daysTurned"));
      return;
    }
    Span span = new Span(first.atStartOfDay(), last.plusDays(1).atStartOfDay());
    ask(
        words.of("week.step.broken", kiln(kilnId), moments().day(first), moments().day(last)),
        request -> ChangeAWeek.outOfOrder(request, kilnId, span));
  }

  /** More ware. */
  public void order(NewOrder order) {
    model
        .plan()
        .ifPresent(
            plan -> {
              Optional<WareLine> line = order.line(plan.request());
              line.ifPresentOrElse(
                  one ->
                      ask(
                          words.of(
                              "week.step.order",
                              one.batch().quantity(),
                              order.formName(),
                              moments().day(order.due())),
                          request -> ChangeAWeek.order(request, List.of(one))),
                  () -> told.set(words.of("week.badQuantity", order.quantity())));
            });
  }

  private Moments moments() {
    return new Moments(words);
  }

  private String kiln(String kilnId) {
    return model
        .plan()
        .map(plan -> FiringWords.kiln(plan.request().studio(), kilnId))
        .orElse(kilnId);
  }

  private void ask(String name, Function<WeekRequest, WeekChange> change) {
    forget();
    Optional<InspectedWeek> before = model.week();
    if (before.isEmpty()) {
      return;
    }
    WeekPlan plan = before.get().plan();
    WeekChange changed = change.apply(ChangeAWeek.again(plan));
    if (changed instanceof WeekChange.Refused refused) {
      told.set(refused.sentence());
      return;
    }
    told.set(words.of("week.trying", name));
    planning.start(((WeekChange.Possible) changed).request(), new Attempt(name, before.get()));
  }

  /** Takes what comes of planning the change. */
  private final class Attempt implements WeekPlanning.Taker {
    private final String name;
    private final InspectedWeek before;

    Attempt(String name, InspectedWeek before) {
      this.name = name;
      this.before = before;
    }

    @Override
    public void better(InspectedWeek week) {
      if (!PlanAround.isCutShort(week)) {
        trial.set(Optional.of(new Trial(name, before, week)));
      }
    }

    @Override
    public void over(boolean stopped) {
      boolean none = trial.get().isEmpty();
      told.set(
          none
              ? words.of(stopped ? "week.stoppedEarly" : "week.noWeek")
              : words.of("week.tried", name));
    }

    @Override
    public void failed(Throwable fault) {
      model.failed(fault);
    }
  }

  /** Makes the trial the week, as one step. */
  public void takeOver() {
    Optional<Trial> taken = trial.get();
    forget();
    taken.ifPresent(one -> model.takeOver(one.name(), one.after()));
  }

  /** Drops the trial; the week is as it was. */
  public void drop() {
    if (trial.get().isPresent() || !told.get().isEmpty()) {
      planning.leave();
    }
    forget();
  }

  void forget() {
    trial.set(Optional.empty());
    told.set("");
  }
}
