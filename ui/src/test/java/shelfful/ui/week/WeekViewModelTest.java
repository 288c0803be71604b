package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.app.FiringPlace;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;
import shelfful.week.Hold;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.OpenHours;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekRequest;

class WeekViewModelTest {
  private final WeekViewModel model =
      new WeekViewModel(Words.english(), new SameThreadTaskRunner(), Optional.empty());

  @BeforeEach
  void begin() {
    model.begin(SmallWeek.planned());
  }

  private InspectedWeek week() {
    return model.week().orElseThrow();
  }

  private PlannedFiring first() {
    return SmallWeek.planned().plan().firings().get(0);
  }

  private PlannedFiring firing(String id) {
    return week().plan().firing(id).orElseThrow();
  }

  private void isJudgedGood() {
    assertThat(new WeekInspector().inspect(week().plan()))
        .isInstanceOf(WeekInspection.Passed.class);
  }

  @Test
  void saysHowTheWeekStands() {
    int firings = week().plan().firings().size();
    assertThat(firings).isGreaterThan(2);
    assertThat(model.state().get()).startsWith(firings + " firings");
    assertThat(model.chosen().get()).isEqualTo(first().id());
  }

  @Test
  void freezingIsAStepThatIsTakenBackAndDoneAgain() {
    InspectedWeek before = week();
    model.freezeOrRelease();
    assertThat(firing(first().id()).hold()).isEqualTo(Hold.ALL);
    assertThat(model.steps().nameOfLast().get()).isEqualTo("Freeze " + first().id());
    isJudgedGood();
    model.undo();
    assertThat(week()).isSameAs(before);
    assertThat(model.steps().nameOfLast().get()).isEmpty();
    assertThat(model.steps().nameOfNext().get()).isEqualTo("Freeze " + first().id());
    model.redo();
    assertThat(firing(first().id()).hold()).isEqualTo(Hold.ALL);
    model.freezeOrRelease();
    assertThat(firing(first().id()).hold()).isEqualTo(Hold.FREE);
    isJudgedGood();
  }

  @Test
  void whatIsFrozenStaysWhenTheWeekIsPlannedAgain() {
    model.freezeOrRelease();
    PlannedFiring frozen = firing(first().id());
    model.planAgain();
    assertThat(firing(first().id())).isEqualTo(frozen);
    assertThat(model.steps().nameOfLast().get()).isEqualTo("Plan again");
    assertThat(model.planning().get()).isFalse();
    isJudgedGood();
  }

  @Test
  void keysWalkThroughTheFiringsInTheirOrder() {
    for (PlannedFiring firing : week().plan().firings()) {
      assertThat(model.chosen().get()).isEqualTo(firing.id());
      model.chooseAfter(1);
    }
    model.chooseAfter(-1000);
    String last = week().plan().firings().get(week().plan().firings().size() - 1).id();
    assertThat(model.chosen().get()).isEqualTo(last);
  }

  @Test
  void goesDayByDayOverDaysWithoutFirings() {
    LocalDate before = firing(model.chosen().get()).times().loads().toLocalDate();
    model.chooseDayAfter(1);
    LocalDate after = firing(model.chosen().get()).times().loads().toLocalDate();
    assertThat(after).isAfter(before);
    model.chooseDayAfter(-1);
    assertThat(firing(model.chosen().get()).times().loads().toLocalDate()).isEqualTo(before);
  }

  @Test
  void aFiringCarriedToALaterDayIsLoadedThereAndTheRestPlannedAroundIt() {
    String id = first().id();
    model.carry().byDays(1);
    model.carry().byDays(1);
    FiringPlace place = model.carry().place().get().orElseThrow();
    assertThat(place.isAllowed()).isTrue();
    assertThat(week()).as("nothing changes while it is carried").isSameAs(SmallWeek.planned());
    assertThat(model.carry().told().get()).contains(id).contains("loaded");
    model.carry().drop();
    assertThat(firing(id).times()).isEqualTo(place.times().orElseThrow());
    assertThat(firing(id).hold()).isEqualTo(Hold.ALL);
    assertThat(firing(id).portions()).as("all that was in it").isEqualTo(first().portions());
    assertThat(model.steps().nameOfLast().get()).startsWith("Move " + id);
    isJudgedGood();
    model.undo();
    assertThat(week()).isSameAs(SmallWeek.planned());
  }

  @Test
  void saysWithFiguresWhyAFiringMayNotStandWhereTheKilnIsOutOfOrder() {
    String id = first().id();
    model.carry().carry(id, "front", LocalDate.of(2026, 6, 9).atTime(12, 0));
    assertThat(model.carry().place().get().orElseThrow().isAllowed()).isFalse();
    assertThat(model.carry().told().get())
        .contains("may not stand here")
        .contains("out of order from Wed 10 Jun 00:00 to Thu 11 Jun 00:00");
    model.carry().drop();
    assertThat(week()).isSameAs(SmallWeek.planned());
    assertThat(model.carry().told().get()).startsWith("Not moved.");
    assertThat(model.carry().carries()).isFalse();
  }

  @Test
  void snapsToTheNearestWorkingHoursAndSaysSo() {
    model.carry().carry(first().id(), first().kilnId(), LocalDate.of(2026, 6, 7).atTime(13, 0));
    FiringPlace place = model.carry().place().get().orElseThrow();
    assertThat(place.times().orElseThrow().loads())
        .isEqualTo(LocalDate.of(2026, 6, 8).atTime(8, 0));
    assertThat(model.carry().told().get())
        .contains("Nobody works on Sun 7 Jun 13:00; the nearest is Mon 8 Jun 08:00");
  }

  @Test
  void settingAFiringDownWhereItWasIsNoStep() {
    model.carry().carry(first().id(), first().kilnId(), first().times().loads());
    model.carry().drop();
    assertThat(model.steps().nameOfLast().get()).isEmpty();
    assertThat(week()).isSameAs(SmallWeek.planned());
  }

  @Test
  void aFiringCarriedToTheOtherKilnIsHeldThere() {
    String id = first().id();
    String other = first().kilnId().equals("front") ? "round-top" : "front";
    model.carry().carry(id, other, LocalDate.of(2026, 6, 4).atTime(9, 0));
    assertThat(model.carry().place().get().orElseThrow().isAllowed()).isTrue();
    model.carry().drop();
    assertThat(firing(id).kilnId()).isEqualTo(other);
    isJudgedGood();
  }

  @Test
  void aTrialStandsBesideTheWeekUntilItIsTakenOver() {
    InspectedWeek before = week();
    model.whatIf().outOfOrder("round-top", LocalDate.of(2026, 6, 1), LocalDate.of(2026, 6, 6));
    WhatIfViewModel.Trial trial = model.whatIf().trial().get().orElseThrow();
    assertThat(week()).isSameAs(before);
    assertThat(trial.after().plan().firings())
        .filteredOn(firing -> firing.kilnId().equals("round-top"))
        .allMatch(firing -> firing.times().loads().toLocalDate().isAfter(LocalDate.of(2026, 6, 6)));
    assertThat(trial.comparison().before().firings()).isEqualTo(before.plan().firings().size());
    model.whatIf().takeOver();
    assertThat(week()).isSameAs(trial.after());
    assertThat(model.steps().nameOfLast().get()).contains("out of order, Mon 1 Jun to Sat 6 Jun");
    model.undo();
    assertThat(week()).isSameAs(before);
  }

  @Test
  void aDroppedTrialLeavesNothingBehind() {
    model.whatIf().extraFiring("front", "glaze-6", LocalDate.of(2026, 6, 12));
    assertThat(model.whatIf().trial().get()).isPresent();
    model.whatIf().drop();
    assertThat(model.whatIf().trial().get()).isEmpty();
    assertThat(week()).isSameAs(SmallWeek.planned());
  }

  @Test
  void anExtraFiringOnAClosedDayIsLoadedAtTheTimeOfDayTheWeekBegins() {
    LocalDate open = LocalDate.of(2026, 6, 11);
    LocalDate closed = LocalDate.of(2026, 6, 12);
    model.begin(openingAtNine(closed));

    assertThat(extraOn(open)).isEqualTo(open.atTime(9, 0));
    assertThat(extraOn(closed)).isEqualTo(closed.atTime(8, 0));
  }

  private LocalDateTime extraOn(LocalDate day) {
    model.whatIf().extraFiring("front", "glaze-6", day);
    InspectedWeek after = model.whatIf().trial().get().orElseThrow().after();
    return after.plan().firings().stream()
        .filter(firing -> firing.hold() == Hold.TIME)
        .findFirst()
        .orElseThrow()
        .times()
        .loads();
  }

  /** A week that begins at eight with a kiln that is tended from nine, but not on one day. */
  private static InspectedWeek openingAtNine(LocalDate closed) {
    KilnWork front = SmallWeek.request().kiln("front").orElseThrow();
    Map<DayOfWeek, OpenHours> hours = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      hours.put(day, new OpenHours(LocalTime.of(9, 0), LocalTime.of(17, 0)));
    }
    KilnCalendar calendar =
        new KilnCalendar(hours, new TreeSet<>(List.of(closed)), front.calendar().outOfOrder());
    WeekRequest request = SmallWeek.request().firedIn(List.of(front.with(calendar)));
    return new PlanAWeek(request).run(WeekListener.none()).orElseThrow();
  }

  @Test
  void aNewOrderIsPlannedWithTheRestAndABadNumberIsRefused() {
    NewOrder order =
        new NewOrder(
            "mug",
            "Mug",
            Optional.of("clear-gloss"),
            shelfful.ware.Stage.GLAZED,
            "20",
            LocalDate.of(2026, 6, 5));
    model.whatIf().order(order);
    WhatIfViewModel.Trial trial = model.whatIf().trial().get().orElseThrow();
    assertThat(trial.after().plan().request().pieces())
        .isEqualTo(week().plan().request().pieces() + 20);
    NewOrder bad =
        new NewOrder(
            "mug",
            "Mug",
            Optional.empty(),
            shelfful.ware.Stage.GLAZED,
            "12,5",
            LocalDate.of(2026, 6, 5));
    model.whatIf().order(bad);
    assertThat(model.whatIf().told().get())
        .isEqualTo("\"12,5\" is no number of pieces. Write 1 to 1000.");
  }

  @Test
  void theTotalsSayThatTheyAreAnEstimate() {
    assertThat(model.shown().get().orElseThrow().totals())
        .anyMatch(line -> line.contains("kWh (an estimate"))
        .anyMatch(line -> line.contains("EUR (an estimate"));
  }
}
