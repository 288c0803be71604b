package shelfful.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.app.PlanAWeek;
import shelfful.app.WeekListener;
import shelfful.fixture.Weeks;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.measure.Point;
import shelfful.ware.Stage;
import shelfful.week.FiringTimes;
import shelfful.week.Hold;
import shelfful.week.KilnCalendar;
import shelfful.week.KilnWork;
import shelfful.week.Late;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.Program;
import shelfful.week.Span;
import shelfful.week.Waiting;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/** A sound week, and the same week with one thing wrong at a time: the judge names just that. */
class WeekInspectorTest {
  private static WeekPlan sound;

  @BeforeAll
  static void plan() {
    WeekRequest request =
        Weeks.week(
            12,
            List.of(Weeks.kiln("K1", Weeks.weekdays()), Weeks.kiln("K2", Weeks.weekdays())),
            List.of(
                Weeks.ware("A", "basin", 3, Stage.BONE_DRY, "2026-06-09"),
                Weeks.ware("B", "drum", 2, Stage.GLAZED, "2026-06-01"),
                Weeks.ware("C", "tower", 1, Stage.GLAZED, "2026-06-05")));
    sound = new PlanAWeek(request).run(WeekListener.none()).orElseThrow().plan();
  }

  private static List<String> rules(WeekPlan plan) {
    WeekInspection inspection = new WeekInspector().inspect(plan);
    return inspection instanceof WeekInspection.Failed failed
        ? failed.findings().stream().map(WeekFinding::rule).distinct().sorted().toList()
        : List.of();
  }

  private static WeekPlan with(WeekPlan plan, int firing, UnaryOperator<PlannedFiring> change) {
    List<PlannedFiring> firings = new ArrayList<>(plan.firings());
    firings.set(firing, change.apply(firings.get(firing)));
    return new WeekPlan(plan.request(), firings, plan.waiting(), plan.late());
  }

  private static WeekPlan asked(WeekPlan plan, WeekRequest request) {
    return new WeekPlan(request, plan.firings(), plan.waiting(), plan.late());
  }

  private static PlannedFiring at(PlannedFiring firing, FiringTimes times) {
    return new PlannedFiring(
        firing.id(),
        firing.kilnId(),
        firing.programId(),
        times,
        firing.portions(),
        firing.load(),
        firing.hold());
  }

  private static PlannedFiring later(PlannedFiring firing, Duration by) {
    FiringTimes t = firing.times();
    return at(
        firing,
        new FiringTimes(
            t.loads().plus(by),
            t.lit().plus(by),
            t.hot().plus(by),
            t.cold().plus(by),
            t.unpacks().plus(by),
            t.unpacked().plus(by)));
  }

  private static int indexOf(String batch, String program) {
    for (int i = 0; i < sound.firings().size(); i++) {
      PlannedFiring firing = sound.firings().get(i);
      if (firing.programId().equals(program)
          && firing.portions().stream().anyMatch(p -> p.batchId().equals(batch))) {
        return i;
      }
    }
    throw new AssertionError("no " + program + " firing of " + batch);
  }

  @Test
  void passesASoundWeekAndCountsWhatIsLateByHand() {
    assertThat(rules(sound)).isEmpty();
    // B is due on the first day and no glaze firing of 25 hours ends on the day it began.
    assertThat(sound.late()).contains(new Late("B", 2, 1));
  }

  @Test
  void findsATimeThatIsNotTheProgramsOwn() {
    WeekPlan wrong =
        with(
            sound,
            0,
            firing -> {
              FiringTimes t = firing.times();
              return at(
                  firing,
                  new FiringTimes(
                      t.loads(),
                      t.lit(),
                      t.hot(),
                      t.cold().minusMinutes(1),
                      t.unpacks(),
                      t.unpacked()));
            });

    assertThat(rules(wrong)).containsExactly("firingTimesWrong");
  }

  @Test
  void findsLoadingAtNight() {
    int last = sound.firings().size() - 1;

    assertThat(rules(with(sound, last, firing -> later(firing, Duration.ofHours(12)))))
        .contains("kilnNotTended");
  }

  @Test
  void findsAKilnThatIsOutOfOrderFromTheFirstMinuteButNotFromTheLast() {
    LocalDateTime empty = sound.firings().get(0).times().unpacked();
    String kiln = sound.firings().get(0).kilnId();

    assertThat(rules(asked(sound, broken(kiln, new Span(empty.minusMinutes(1), empty)))))
        .containsExactly("kilnOutOfOrder");
    boolean alone =
        sound.firings().stream()
            .noneMatch(f -> f.kilnId().equals(kiln) && f.times().loads().equals(empty));
    Span after = new Span(empty, empty.plusMinutes(1));
    assertThat(rules(asked(sound, broken(kiln, after)))).hasSize(alone ? 0 : 1);
  }

  private static WeekRequest broken(String kilnId, Span span) {
    List<KilnWork> kilns =
        sound.request().kilns().stream()
            .map(
                work ->
                    work.kilnId().equals(kilnId) ? work.with(work.calendar().without(span)) : work)
            .toList();
    return sound.request().firedIn(kilns);
  }

  @Test
  void findsTwoFiringsInOneKiln() {
    PlannedFiring first = sound.firings().get(0);
    WeekPlan wrong =
        with(
            sound,
            1,
            firing ->
                at(
                    new PlannedFiring(
                        firing.id(),
                        first.kilnId(),
                        firing.programId(),
                        firing.times(),
                        List.of(),
                        Optional.empty(),
                        Hold.FREE),
                    first.times()));

    assertThat(rules(wrong)).contains("firingsOverlap");
  }

  @Test
  void findsWareThatIsNotReady() {
    LocalDateTime loads = sound.firings().get(indexOf("C", "glaze")).times().loads();
    List<WareLine> lines = new ArrayList<>(sound.request().lines());
    WareLine c = lines.get(2);
    lines.set(2, new WareLine(c.batch(), c.made(), Optional.of(loads.plusMinutes(1))));
    assertThat(rules(asked(sound, sound.request().of(lines)))).containsExactly("pieceNotReady");

    lines.set(2, new WareLine(c.batch(), c.made(), Optional.of(loads)));
    assertThat(rules(asked(sound, sound.request().of(lines)))).isEmpty();
  }

  @Test
  void findsGlazedWareThatWasNotBisquedOrNotLongEnoughAgo() {
    int glaze = indexOf("A", "glaze");
    int bisque = indexOf("A", "bisque");
    LocalDateTime bisqued = sound.firings().get(bisque).times().unpacked();
    LocalDateTime loads = sound.firings().get(glaze).times().loads();
    assertThat(loads).isAfterOrEqualTo(bisqued.plusDays(1));

    List<PlannedFiring> without = new ArrayList<>(sound.firings());
    without.remove(bisque);
    WeekPlan wrong = new WeekPlan(sound.request(), without, sound.waiting(), sound.late());

    assertThat(rules(wrong)).contains("pieceNotBisqued", "pieceUnaccountedFor");
  }

  @Test
  void findsAGlazeFiringLoadedAMinuteBeforeThePauseForGlazingIsOver() {
    int glaze = indexOf("A", "glaze");
    PlannedFiring bisque = sound.firings().get(indexOf("A", "bisque"));
    List<Integer> fired = numbersOf("A", sound.firings().get(glaze));
    assertThat(numbersOf("A", bisque)).containsAll(fired);
    LocalDateTime loads = sound.firings().get(glaze).times().loads();
    // A day for glazing.
    Duration earlier = Duration.between(loads, bisque.times().unpacked().plusDays(1));

    assertThat(rules(with(sound, glaze, firing -> later(firing, earlier))))
        .doesNotContain("pieceNotReady");
    assertThat(rules(with(sound, glaze, firing -> later(firing, earlier.minusMinutes(1)))))
        .contains("pieceNotReady");
  }

  private static List<Integer> numbersOf(String batch, PlannedFiring firing) {
    return firing.portions().stream()
        .filter(portion -> portion.batchId().equals(batch))
        .flatMap(portion -> portion.numbers().stream())
        .toList();
  }

  @Test
  void findsAPieceThatIsLostOrFiredTwice() {
    List<PlannedFiring> without = new ArrayList<>(sound.firings());
    PlannedFiring lost = without.remove(indexOf("C", "glaze"));
    assertThat(rules(new WeekPlan(sound.request(), without, sound.waiting(), sound.late())))
        .contains("pieceUnaccountedFor");

    List<PlannedFiring> twice = new ArrayList<>(sound.firings());
    twice.add(
        later(
            new PlannedFiring(
                "Z",
                lost.kilnId(),
                lost.programId(),
                lost.times(),
                lost.portions(),
                lost.load(),
                Hold.FREE),
            Duration.ofDays(7)));
    assertThat(rules(new WeekPlan(sound.request(), twice, sound.waiting(), sound.late())))
        .contains("pieceFiredNeedlessly");
  }

  @Test
  void findsWaitingThatIsNotTrueOrHasNoCause() {
    Waiting said =
        new Waiting(
            new Portion("C", List.of(1)),
            shelfful.ware.FiringKind.GLAZE,
            Waiting.Reason.NO_PROGRAM,
            "",
            "");
    WeekPlan wrong = new WeekPlan(sound.request(), sound.firings(), List.of(said), sound.late());

    assertThat(rules(wrong)).containsExactly("pieceUnaccountedFor", "waitingWithoutCause");
  }

  @Test
  void findsALoadOfOtherPiecesOrThatBreaksARule() {
    int c = indexOf("C", "glaze");
    WeekPlan other =
        with(
            sound,
            c,
            firing ->
                new PlannedFiring(
                    firing.id(),
                    firing.kilnId(),
                    firing.programId(),
                    firing.times(),
                    firing.portions(),
                    sound.firings().get(indexOf("B", "glaze")).load(),
                    firing.hold()));
    assertThat(rules(other)).contains("loadNotAsPlanned");

    WeekPlan shoved = with(sound, c, WeekInspectorTest::shoved);
    assertThat(rules(shoved)).containsExactly("loadBreaksRules");
  }

  private static PlannedFiring shoved(PlannedFiring firing) {
    Load load = firing.load().orElseThrow();
    List<Layer> layers =
        load.layers().stream()
            .map(
                layer ->
                    new Layer(
                        layer.id(),
                        layer.columnId(),
                        layer.level(),
                        layer.place(),
                        layer.shelfId(),
                        layer.z(),
                        layer.placements().stream()
                            .map(
                                p ->
                                    new shelfful.load.Placement(
                                        p.pieceId(),
                                        Point.ofMillimetres(200, 0),
                                        p.turn(),
                                        p.onCatcher()))
                            .toList()))
            .toList();
    Load wrong =
        new Load(load.request(), load.columnPlanId(), layers, load.posts(), load.leftOut());
    return new PlannedFiring(
        firing.id(),
        firing.kilnId(),
        firing.programId(),
        firing.times(),
        firing.portions(),
        Optional.of(wrong),
        firing.hold());
  }

  @Test
  void findsLatenessThatIsHiddenOrMadeUp() {
    WeekPlan hidden = new WeekPlan(sound.request(), sound.firings(), sound.waiting(), List.of());
    assertThat(rules(hidden)).containsExactly("latenessWrong");

    assertThat(sound.late()).extracting(Late::batchId).doesNotContain("C");
    List<Late> more = new ArrayList<>(sound.late());
    more.add(new Late("C", 1, 1));
    WeekPlan madeUp = new WeekPlan(sound.request(), sound.firings(), sound.waiting(), more);
    assertThat(rules(madeUp)).containsExactly("latenessWrong");

    List<Late> longer = new ArrayList<>(sound.late());
    longer.set(0, new Late(longer.get(0).batchId(), longer.get(0).pieces(), 9));
    WeekPlan stretched = new WeekPlan(sound.request(), sound.firings(), sound.waiting(), longer);
    assertThat(rules(stretched)).containsExactly("latenessWrong");
  }

  @Test
  void findsAHeldFiringThatMovedOrWentAwayAndOneThatOnlyClaimsToBeHeld() {
    PlannedFiring first = sound.firings().get(0);
    WeekRequest held =
        sound.request().holding(List.of(later(first, Duration.ofDays(1)).held(Hold.TIME)));
    assertThat(rules(asked(sound, held))).containsExactly("heldFiringChanged");
    assertThat(rules(with(sound, 0, firing -> firing.held(Hold.ALL))))
        .containsExactly("heldFiringChanged");

    WeekRequest frozen = sound.request().holding(List.of(first.held(Hold.ALL)));
    assertThat(rules(with(asked(sound, frozen), 0, firing -> firing.held(Hold.ALL)))).isEmpty();
  }

  @Test
  void findsUnknownProgramsNumbersAndTwins() {
    WeekPlan unknown =
        with(
            sound,
            0,
            f ->
                new PlannedFiring(
                    f.id(), f.kilnId(), "raku", f.times(), f.portions(), f.load(), f.hold()));
    assertThat(rules(unknown)).containsExactly("firingNotKnown");

    WeekPlan number =
        with(
            sound,
            indexOf("C", "glaze"),
            f ->
                new PlannedFiring(
                    f.id(),
                    f.kilnId(),
                    f.programId(),
                    f.times(),
                    List.of(new Portion("C", List.of(2))),
                    f.load(),
                    f.hold()));
    assertThat(rules(number)).containsExactly("pieceUnknown");

    String first = sound.firings().get(0).id();
    WeekPlan twins =
        with(
            sound,
            1,
            f ->
                new PlannedFiring(
                    first, f.kilnId(), f.programId(), f.times(), f.portions(), f.load(), f.hold()));
    assertThat(rules(twins)).containsExactly("firingNotKnown");
  }

  @Test
  void findsAFiringThatEndsAfterTheWeek() {
    WeekRequest asked = sound.request();
    WeekRequest shorter =
        new WeekRequest(
            asked.studio(),
            asked.start(),
            asked.start().toLocalDate(),
            asked.lines(),
            asked.kilns(),
            asked.pauses(),
            asked.tariff(),
            asked.together(),
            asked.held(),
            asked.earlier(),
            asked.effort());

    assertThat(rules(asked(sound, shorter))).containsExactly("firingOutsideWeek");
  }

  @Test
  void wishesThatAnOrderGoesTogether() {
    WeekRequest together =
        Weeks.together(
            Weeks.week(
                7,
                List.of(Weeks.kiln("K1", Weeks.weekdays())),
                List.of(Weeks.ordered("A", "tower", 2, Stage.GLAZED, "the tall pair"))),
            List.of("the tall pair"));

    InspectedWeek week = new PlanAWeek(together).run(WeekListener.none()).orElseThrow();

    assertThat(week.wishes()).extracting(WeekFinding::rule).containsExactly("orderNotTogether");
  }

  @Test
  void programsThatAreTooHotAreNotEvenAsked() {
    KilnCalendar calendar = Weeks.weekdays();
    Program hot = Weeks.program("hot", shelfful.ware.FiringKind.GLAZE, "10", 9, 16);
    KilnWork kiln = new KilnWork("K1", calendar, java.util.OptionalDouble.empty(), List.of(hot));

    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> Weeks.week(7, List.of(kiln), List.of()))
        .hasMessageContaining("cone 10")
        .hasMessageContaining("cone 8");
  }
}
