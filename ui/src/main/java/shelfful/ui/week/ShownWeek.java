package shelfful.ui.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.review.InspectedWeek;
import shelfful.ui.calendar.CalendarPicture;
import shelfful.ui.words.Words;
import shelfful.ware.Batch;
import shelfful.week.Hold;
import shelfful.week.KilnWork;
import shelfful.week.Late;
import shelfful.week.Lateness;
import shelfful.week.OpenHours;
import shelfful.week.PlannedFiring;
import shelfful.week.Span;
import shelfful.week.Waiting;
import shelfful.week.WeekPlan;
import shelfful.week.WeekRequest;

/**
 * A week that breaks no rule with all that is shown of it, made together so that no part is older
 * than another.
 *
 * @param week what was judged
 * @param picture its calendar
 * @param firings a row for each firing
 * @param late a row for each batch and number of days
 * @param waiting a row for each that waits
 * @param totals lines of figures
 */
record ShownWeek(
    InspectedWeek week,
    CalendarPicture picture,
    List<Row> firings,
    List<Row> late,
    List<Row> waiting,
    List<String> totals) {

  /**
   * A row of a list.
   *
   * @param firingId the firing it belongs to; empty text when to none
   * @param first what it is
   * @param second what else there is to say
   */
  record Row(String firingId, String first, String second) {
    /** All of it, to be read aloud. */
    String spoken() {
      return second.isEmpty() ? first : first + ". " + second;
    }
  }

  static ShownWeek of(InspectedWeek week, Words words) {
    WeekPlan plan = week.plan();
    List<CalendarPicture.Bar> bars = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (PlannedFiring firing : plan.firings()) {
      FiringWords said = new FiringWords(words, plan, firing);
      bars.add(
          new CalendarPicture.Bar(
              firing.id(),
              firing.kilnId(),
              firing.times(),
              said.lines(),
              firing.hold() != Hold.FREE));
      String when = words.of("week.row", said.title(), said.when());
      rows.add(new Row(firing.id(), when, said.what() + ". " + said.phases()));
    }
    return new ShownWeek(
        week,
        new CalendarPicture(start(plan), plan.request().end(), kilns(plan.request()), bars),
        rows,
        late(plan, words),
        waiting(plan, words),
        TotalWords.of(plan, words));
  }

  private static java.time.LocalDateTime start(WeekPlan plan) {
    return plan.request().start().toLocalDate().atStartOfDay();
  }

  private static List<CalendarPicture.Row> kilns(WeekRequest request) {
    return request.kilns().stream()
        .map(
            kiln ->
                new CalendarPicture.Row(
                    kiln.kilnId(),
                    FiringWords.kiln(request.studio(), kiln.kilnId()),
                    tended(request, kiln),
                    kiln.calendar().outOfOrder()))
        .toList();
  }

  private static List<Span> tended(WeekRequest request, KilnWork kiln) {
    List<Span> spans = new ArrayList<>();
    LocalDate day = request.start().toLocalDate();
    for (; !day.isAfter(request.lastDay()); day = day.plusDays(1)) {
      Optional<OpenHours> hours = kiln.calendar().open(day);
      if (hours.isPresent()) {
        spans.add(new Span(day.atTime(hours.get().from()), day.atTime(hours.get().to())));
      }
    }
    return spans;
  }

  private static List<Row> late(WeekPlan plan, Words words) {
    Moments moments = new Moments(words);
    return plan.late().stream()
        .map(
            late -> {
              Batch batch = batch(plan, late.batchId());
              String due = batch.due().map(moments::day).orElse("");
              String firing = firingOf(plan, late).map(PlannedFiring::id).orElse("");
              return new Row(
                  firing,
                  words.of("week.lateRow", late.pieces(), what(plan, batch), late.days()),
                  words.of("week.lateDue", due, firing));
            })
        .toList();
  }

  private static Optional<PlannedFiring> firingOf(WeekPlan plan, Late late) {
    return plan.firings().stream()
        .filter(
            firing -> firing.portions().stream().anyMatch(p -> p.batchId().equals(late.batchId())))
        .filter(
            firing ->
                Lateness.days(
                        plan.request(), plan.request().line(late.batchId()).orElseThrow(), firing)
                    == late.days())
        .findFirst();
  }

  private static List<Row> waiting(WeekPlan plan, Words words) {
    return plan.waiting().stream().map(waiting -> waiting(plan, waiting, words)).toList();
  }

  private static Row waiting(WeekPlan plan, Waiting waiting, Words words) {
    Batch batch = batch(plan, waiting.portion().batchId());
    return new Row(
        "",
        words.of("week.waitingRow", waiting.portion().size(), what(plan, batch)),
        (waiting.sentence() + " " + waiting.mend()).strip());
  }

  private static Batch batch(WeekPlan plan, String id) {
    return plan.request().line(id).orElseThrow().batch();
  }

  /** Form, batch and order. */
  private static String what(WeekPlan plan, Batch batch) {
    String form =
        plan.request()
            .studio()
            .form(batch.formId())
            .map(one -> one.name() + ", " + batch.id())
            .orElse(batch.id());
    return batch.order().map(order -> form + ", " + order).orElse(form);
  }

  /** Whether the week has this firing. */
  boolean has(String firingId) {
    return week.plan().firing(firingId).isPresent();
  }
}
