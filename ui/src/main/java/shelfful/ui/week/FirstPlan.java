package shelfful.ui.week;

import shelfful.review.InspectedWeek;
import shelfful.ui.words.Words;

/** Takes what comes of planning a week from nothing; the first one takes the place of what was. */
final class FirstPlan implements WeekPlanning.Taker {
  private final WeekViewModel model;
  private final Words words;
  private boolean begun;

  FirstPlan(WeekViewModel model, Words words) {
    this.model = model;
    this.words = words;
  }

  @Override
  public void better(InspectedWeek week) {
    if (begun) {
      model.steps().better(week);
    } else {
      begun = true;
      model.steps().begin(week);
    }
  }

  @Override
  public void over(boolean stopped) {
    if (!begun) {
      model.tell(words.of("week.noWeek"));
    }
  }

  @Override
  public void failed(Throwable fault) {
    model.failed(fault);
  }
}
