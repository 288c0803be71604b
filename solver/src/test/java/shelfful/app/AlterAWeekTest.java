package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;
import shelfful.review.InspectedWeek;
import shelfful.ware.Stage;
import shelfful.week.Hold;
import shelfful.week.PlannedFiring;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** One kiln, one tower that is bisqued and then glaze fired, and one that is only glaze fired. */
class AlterAWeekTest {
  private static WeekPlan plan;

  @BeforeAll
  static void planOnce() {
    plan =
        planned(
                Weeks.week(
                    21,
                    List.of(Weeks.kiln("K1", Weeks.weekdays())),
                    List.of(
                        Weeks.ware("A", "tower", 1, Stage.GLAZED, "2026-06-12"),
                        Weeks.ware("B", "tower", 1, Stage.BONE_DRY, "2026-06-12"))))
            .orElseThrow()
            .plan();
  }

  private static Optional<InspectedWeek> planned(WeekRequest request) {
    return new PlanAWeek(request).run(WeekListener.none());
  }

  private static PlannedFiring firing(WeekPlan week, String batch, String program) {
    return week.firings().stream()
        .filter(firing -> firing.programId().equals(program))
        .filter(firing -> firing.portions().stream().anyMatch(p -> p.batchId().equals(batch)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBisqueMovedPastTheFrozenGlazeFiringItFeedsReleasesThat() {
    PlannedFiring bisque = firing(plan, "B", "bisque");
    PlannedFiring glaze = firing(plan, "B", "glaze");
    WeekPlan frozen = planned(ChangeAWeek.freeze(plan, glaze.id())).orElseThrow().plan();
    LocalDateTime after = Weeks.START.plusDays(14);
    assertThat(after).isAfter(glaze.times().unpacked());
    FiringPlace place = new FiringPlaces(frozen, bisque.id()).near("K1", after);
    assertThat(place.isAllowed()).isTrue();

    Optional<InspectedWeek> around = planned(AlterAWeek.around(frozen, place));

    assertThat(around).isPresent();
    WeekPlan week = around.get().plan();
    assertThat(week.firing(bisque.id()).orElseThrow().times())
        .isEqualTo(place.times().orElseThrow());
    PlannedFiring later = firing(week, "B", "glaze");
    assertThat(later.hold()).isEqualTo(Hold.FREE);
    assertThat(later.times().loads())
        .isAfterOrEqualTo(place.times().orElseThrow().unpacked().plusDays(1));
  }

  @Test
  void freezingHoldsTheSourcesAndReleasingThemReleasesWhatTheyFeedAsPlanningAgainDoes() {
    PlannedFiring bisque = firing(plan, "B", "bisque");
    PlannedFiring glaze = firing(plan, "B", "glaze");

    WeekPlan frozen = AlterAWeek.hold(plan, glaze.id(), Hold.ALL).orElseThrow().plan();
    assertThat(held(frozen)).containsExactlyInAnyOrder(bisque.id(), glaze.id());
    assertThat(held(frozen))
        .isEqualTo(held(planned(ChangeAWeek.freeze(plan, glaze.id())).get().plan()));

    WeekPlan released = AlterAWeek.hold(frozen, bisque.id(), Hold.FREE).orElseThrow().plan();
    assertThat(held(released)).isEmpty();
    assertThat(released.firings()).isEqualTo(plan.firings());

    WeekPlan other = AlterAWeek.hold(frozen, glaze.id(), Hold.FREE).orElseThrow().plan();
    assertThat(held(other)).containsExactly(bisque.id());
  }

  @Test
  void holdingOnlyTheTimeOfABisqueReleasesWhatItFeeds() {
    PlannedFiring bisque = firing(plan, "B", "bisque");
    WeekPlan frozen =
        AlterAWeek.hold(plan, firing(plan, "B", "glaze").id(), Hold.ALL).orElseThrow().plan();

    WeekPlan time = AlterAWeek.hold(frozen, bisque.id(), Hold.TIME).orElseThrow().plan();

    assertThat(held(time)).containsExactly(bisque.id());
    assertThat(time.firing(bisque.id()).orElseThrow().hold()).isEqualTo(Hold.TIME);
  }

  private static List<String> held(WeekPlan week) {
    return week.firings().stream()
        .filter(firing -> firing.hold() != Hold.FREE)
        .map(PlannedFiring::id)
        .toList();
  }
}
