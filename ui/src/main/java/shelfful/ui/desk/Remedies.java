package shelfful.ui.desk;

import java.util.Optional;
import shelfful.app.PlanAround;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspector;
import shelfful.load.KeptSetting;
import shelfful.load.Load;
import shelfful.remedy.Remedy;
import shelfful.remedy.RemedyKind;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.why.WhyViewModel;
import shelfful.ui.words.Words;

/**
 * Remedies for what waits in the load on the desk: looked for around everything pinned and locked,
 * and done as one step of the desk's history.
 */
final class Remedies {
  private final DeskViewModel desk;
  private final WhyViewModel why;
  private Optional<WorkPlan> lookedAt = Optional.empty();

  Remedies(Words words, TaskRunner tasks, DeskViewModel desk) {
    this.desk = desk;
    this.why = new WhyViewModel(words, tasks, this::take);
  }

  WhyViewModel why() {
    return why;
  }

  /** Looks at what is on the desk now. */
  void look() {
    Optional<ShownLoad> shown = desk.shown().get().filter(load -> load.inspected().isPresent());
    lookedAt = shown.map(ShownLoad::plan);
    why.look(shown.flatMap(Remedies::held));
  }

  /** The same load asked for with all that the desk holds in its place. */
  private static Optional<InspectedLoad> held(ShownLoad shown) {
    WorkPlan plan = shown.plan();
    boolean free = plan.pinned().isEmpty() && plan.locked().isEmpty();
    if (free && plan.load().request().kept().isEmpty()) {
      return shown.inspected();
    }
    Load load = plan.load();
    KeptSetting kept = KeptSetting.of(load, plan.pinned(), plan.locked());
    Load asked =
        new Load(
            load.request().keeping(kept),
            load.columnPlanId(),
            load.layers(),
            load.posts(),
            load.leftOut());
    return new Inspector().inspect(asked).passed();
  }

  /** Refuses a remedy for a plan that has changed, or one that would move what is held. */
  private boolean take(Remedy remedy) {
    desk.settle();
    Load after = remedy.load().load();
    boolean same = lookedAt.isPresent() && desk.work().plan().get().equals(lookedAt);
    boolean keeps =
        remedy.kind() == RemedyKind.NEXT_FIRING
            || lookedAt.filter(plan -> PlanAround.keeps(plan, after)).isPresent();
    return same && keeps && desk.work().apply(new Edit.TakeRemedy(after));
  }
}
