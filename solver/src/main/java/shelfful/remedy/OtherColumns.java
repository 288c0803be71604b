package shelfful.remedy;

import java.util.List;
import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.kiln.ColumnPlan;
import shelfful.load.RequestChange;

/** Sets everything anew in each of the kiln's other column plans. */
final class OtherColumns implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.OTHER_COLUMN_PLAN;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    boolean reason = Reasons.isOfRoom(one) || Reasons.isOfSize(one);
    return reason && one.request().kept().isEmpty() && !others(one).isEmpty();
  }

  private static List<String> others(WaitingCase one) {
    return one.request().kiln().columnPlans().stream()
        .map(ColumnPlan::id)
        .filter(id -> !id.equals(one.load().columnPlanId()))
        .toList();
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    for (String plan : others(one)) {
      Optional<InspectedLoad> load = one.plan().anew(RequestChange.columnPlan(one.request(), plan));
      if (load.isPresent()) {
        Telling telling = new Telling(one, load.get());
        if (telling.change().losesNothing()) {
          return Optional.of(remedy(one, load.get(), telling));
        }
        one.byTheWay().add(load.get());
      }
    }
    return Optional.empty();
  }

  private static Remedy remedy(WaitingCase one, InspectedLoad load, Telling telling) {
    String sentence =
        telling.goIn()
            + " when everything is set anew in the column plan "
            + load.load().columnPlanId()
            + ": "
            + telling.counts()
            + ".";
    return new Remedy(
        RemedyKind.OTHER_COLUMN_PLAN,
        one.gained(load.load()),
        sentence,
        load,
        telling.change(),
        Optional.empty());
  }
}
