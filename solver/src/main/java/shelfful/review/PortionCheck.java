package shelfful.review;

import java.util.List;
import java.util.Optional;
import shelfful.load.Load;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.week.PlannedFiring;
import shelfful.week.Portion;
import shelfful.week.Program;
import shelfful.week.WeekPlan;

/** Whether each load is of the pieces, the kiln and the program that the week says. */
final class PortionCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    for (PlannedFiring firing : plan.firings()) {
      if (firing.load().isPresent() && !agrees(plan, firing, firing.load().get())) {
        findings.firing(
            WeekRule.LOAD_NOT_AS_PLANNED,
            firing.id(),
            "The load of the firing "
                + firing.id()
                + " is not of the pieces, the kiln and the program that the week says.");
      }
    }
  }

  private static boolean agrees(WeekPlan plan, PlannedFiring firing, Load load) {
    Program program = plan.request().program(firing).orElseThrow();
    List<Batch> batches = load.request().batches();
    boolean same =
        load.request().firing().equals(program.in(firing.kilnId()))
            && load.request().studio().equals(plan.request().studio())
            && load.leftOut().isEmpty()
            && batches.size() == firing.portions().size();
    for (int i = 0; same && i < batches.size(); i++) {
      Portion portion = firing.portions().get(i);
      Batch listed = plan.request().line(portion.batchId()).orElseThrow().batch();
      same = isSame(batches.get(i), listed, portion, program.kind());
    }
    return same;
  }

  private static boolean isSame(Batch loaded, Batch listed, Portion portion, FiringKind kind) {
    boolean glaze = kind == FiringKind.GLAZE;
    return loaded.id().equals(portion.batchId())
        && loaded.quantity() == portion.size()
        && loaded.formId().equals(listed.formId())
        && loaded.glazeId().equals(glaze ? listed.glazeId() : Optional.empty())
        && loaded.cone().equals(glaze ? listed.cone() : Optional.empty())
        && loaded.lidPlace() == listed.lidPlace()
        && loaded.set().equals(listed.set())
        && loaded.order().equals(listed.order())
        && loaded.stage() == kind.goesIn();
  }
}
