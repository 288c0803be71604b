package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.app.FiringPlace.Kind;
import shelfful.fixture.Weeks;
import shelfful.review.InspectedWeek;
import shelfful.review.WeekInspection;
import shelfful.review.WeekInspector;
import shelfful.ware.Stage;
import shelfful.week.Hold;
import shelfful.week.KilnWork;
import shelfful.week.PlannedFiring;
import shelfful.week.Span;
import shelfful.week.WeekPlan;

/** Two kilns on weekdays from eight to five; loading takes two hours, a glaze firing 25. */
class FiringPlacesTest {
  private static WeekPlan plan;
  private static PlannedFiring glaze;

  @BeforeAll
  static void planOnce() {
    Span broken = new Span(Weeks.START.plusDays(9), Weeks.START.plusDays(10));
    KilnWork only =
        new KilnWork(
            "K2", Weeks.weekdays().without(broken), OptionalDouble.of(10), List.of(Weeks.bisque()));
    plan =
        new PlanAWeek(
                Weeks.week(
                    14,
                    List.of(Weeks.kiln("K1", Weeks.weekdays()), only),
                    List.of(
                        Weeks.ware("A", "tower", 2, Stage.GLAZED, "2026-06-05"),
                        Weeks.ware("B", "tower", 1, Stage.BONE_DRY, "2026-06-12"))))
            .run(WeekListener.none())
            .orElseThrow()
            .plan();
    glaze =
        plan.firings().stream()
            .filter(firing -> firing.programId().equals("glaze"))
            .findFirst()
            .orElseThrow();
  }

  private static FiringPlace near(LocalDateTime wished) {
    return new FiringPlaces(plan, glaze.id()).near("K1", wished);
  }

  private static LocalDateTime loads(FiringPlace place) {
    return place.times().orElseThrow().loads();
  }

  @Test
  void keepsATimeWithinWorkingHoursToTheQuarterOfAnHour() {
    assertThat(loads(near(LocalDateTime.of(2026, 6, 9, 9, 38))))
        .isEqualTo(LocalDateTime.of(2026, 6, 9, 9, 45));
  }

  @Test
  void movesATimeTooLateToLoadToTheLastThatLeavesTimeForIt() {
    assertThat(loads(near(LocalDateTime.of(2026, 6, 9, 16, 30))))
        .isEqualTo(LocalDateTime.of(2026, 6, 9, 15, 0));
  }

  @Test
  void movesASundayToTheNearestWorkingDayAndSaysSo() {
    FiringPlace place = near(LocalDateTime.of(2026, 6, 7, 20, 0));
    assertThat(loads(place)).isEqualTo(LocalDateTime.of(2026, 6, 8, 8, 0));
    assertThat(place.hindrances())
        .anyMatch(
            one ->
                one.kind() == Kind.MOVED_INTO_HOURS
                    && one.from().equals(LocalDateTime.of(2026, 6, 7, 20, 0))
                    && one.to().equals(LocalDateTime.of(2026, 6, 8, 8, 0)));
  }

  @Test
  void everyTimeItGivesIsOneAtWhichSomebodyIsThere() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 500; i++) {
      FiringPlace place = near(Weeks.START.plusMinutes(random.nextInt(14 * 24 * 60)));
      place
          .times()
          .ifPresent(
              times -> {
                assertThat(Weeks.weekdays().isTended(new Span(times.loads(), times.lit())))
                    .isTrue();
                assertThat(Weeks.weekdays().isTended(new Span(times.unpacks(), times.unpacked())))
                    .isTrue();
              });
    }
  }

  @Test
  void aKilnWithoutSuchAProgramForbidsIt() {
    FiringPlace place = new FiringPlaces(plan, glaze.id()).near("K2", glaze.times().loads());
    assertThat(place.isAllowed()).isFalse();
    assertThat(place.hindrances())
        .extracting(FiringPlace.Hindrance::kind)
        .contains(Kind.NO_PROGRAM);
  }

  @Test
  void whatCannotBeUnpackedWithinTheWeekIsForbidden() {
    FiringPlace place = near(LocalDateTime.of(2026, 6, 12, 15, 0));
    assertThat(place.times()).isEmpty();
    assertThat(place.isAllowed()).isFalse();
    assertThat(place.hindrances().get(0).kind()).isEqualTo(Kind.AFTER_THE_WEEK);
  }

  @Test
  void aFreeFiringGivesWayAndAHeldOneForbids() {
    PlannedFiring other =
        plan.firings().stream()
            .filter(firing -> firing.kilnId().equals("K1") && !firing.id().equals(glaze.id()))
            .findFirst()
            .orElseThrow();
    FiringPlace free = near(other.times().loads());
    assertThat(free.isAllowed()).isTrue();
    assertThat(free.hindrances())
        .anyMatch(one -> one.kind() == Kind.FIRING_IN_THE_WAY && one.name().equals(other.id()));
    WeekPlan held = AlterAWeek.hold(plan, other.id(), Hold.ALL).orElseThrow().plan();
    FiringPlace forbidden = new FiringPlaces(held, glaze.id()).near("K1", other.times().loads());
    assertThat(forbidden.isAllowed()).isFalse();
    assertThat(forbidden.hindrances().get(0).kind()).isEqualTo(Kind.HELD_IN_THE_WAY);
  }

  @Test
  void saysHowManyPiecesAreNotReadyAndWhenTheLastOfThemIs() {
    PlannedFiring last =
        plan.firings().stream()
            .filter(firing -> firing.portions().stream().anyMatch(p -> p.batchId().equals("B")))
            .filter(firing -> firing.programId().equals("glaze"))
            .findFirst()
            .orElseThrow();
    PlannedFiring bisque =
        plan.firings().stream()
            .filter(firing -> firing.programId().equals("bisque"))
            .findFirst()
            .orElseThrow();
    FiringPlace place = new FiringPlaces(plan, last.id()).near("K1", Weeks.START);
    assertThat(place.hindrances())
        .anyMatch(
            one ->
                one.kind() == Kind.WARE_NOT_READY
                    && one.pieces() == 1
                    && one.to().equals(bisque.times().unpacked().plusDays(1)));
  }

  @Test
  void aWeekWithAFiringElsewhereIsPlannedAroundIt() {
    FiringPlace place = near(LocalDateTime.of(2026, 6, 10, 9, 0));
    Optional<InspectedWeek> around =
        new PlanAWeek(AlterAWeek.around(plan, place)).run(WeekListener.none());
    assertThat(around.orElseThrow().plan().firing(glaze.id()).orElseThrow().times())
        .isEqualTo(place.times().orElseThrow());
    assertThat(new WeekInspector().inspect(around.orElseThrow().plan()))
        .isInstanceOf(WeekInspection.Passed.class);
  }

  @Test
  void movedAloneItIsLateByAsManyDaysAsTheJudgeCounts() {
    FiringPlace place = near(LocalDateTime.of(2026, 6, 10, 9, 0));
    Optional<InspectedWeek> moved = AlterAWeek.move(plan, place);
    assertThat(moved).isPresent();
    assertThat(moved.get().plan().late()).isNotEmpty();
    assertThat(moved.get().plan().late().get(0).days()).isEqualTo(6);
  }

  @Test
  void stepsFromWorkingDayToWorkingDay() {
    FiringPlaces places = new FiringPlaces(plan, glaze.id());
    LocalDateTime friday = LocalDateTime.of(2026, 6, 5, 9, 0);
    assertThat(loads(places.daysAway("K1", friday, 1).orElseThrow()))
        .isEqualTo(LocalDateTime.of(2026, 6, 8, 9, 0));
    assertThat(places.daysAway("K1", Weeks.START, -1)).isEmpty();
  }
}
