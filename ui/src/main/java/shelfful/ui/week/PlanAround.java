package shelfful.ui.week;

import shelfful.review.InspectedWeek;
import shelfful.ui.words.Words;
import shelfful.week.Waiting;

/**
 * Takes what comes of planning a week again as one step, which grows better while planning goes on.
 * What is shown already is replaced only by what is no worse.
 */
final class PlanAround implements WeekPlanning.Taker {
  private final WeekViewModel model;
  private final Words words;
  private final String name;
  private boolean noted;

  /**
   * Takes the weeks of one planning.
   *
   * @param name of the step
   * @param noted whether the step is there already
   */
  PlanAround(WeekViewModel model, Words words, String name, boolean noted) {
    this.model = model;
    this.words = words;
    this.name = name;
    this.noted = noted;
  }

  @Override
  public void better(InspectedWeek week) {
    if (isCutShort(week)) {
      return;
    }
    if (!noted) {
      noted = true;
      model.steps().note(name, week);
    } else if (WeekRank.isNoWorse(week, model.week().orElseThrow())) {
      model.steps().better(week);
    }
  }

  /** Planning was stopped before every piece had its turn; the week before is better than that. */
  static boolean isCutShort(InspectedWeek week) {
    return week.plan().waiting().stream()
        .anyMatch(waiting -> waiting.reason() == Waiting.Reason.NOT_PLANNED);
  }

  @Override
  public void over(boolean stopped) {
    if (!noted) {
      model.tell(words.of(stopped ? "week.stoppedEarly" : "week.noWeek"));
    }
  }

  @Override
  public void failed(Throwable fault) {
    model.failed(fault);
  }
}
