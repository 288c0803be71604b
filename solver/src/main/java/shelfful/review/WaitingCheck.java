package shelfful.review;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.week.Program;
import shelfful.week.Waiting;
import shelfful.week.WareLine;
import shelfful.week.WeekPlan;

/** Whether every piece that misses a firing is said to wait, once, for the first one it misses. */
final class WaitingCheck implements WeekCheck {
  @Override
  public void judge(WeekPlan plan, Ways ways, WeekFindings findings) {
    Map<String, Waiting> said = new HashMap<>();
    for (Waiting waiting : plan.waiting()) {
      String id = waiting.portion().batchId();
      for (int number : waiting.portion().numbers()) {
        if (said.put(id + "#" + number, waiting) != null) {
          unaccounted(id, number, "is said to wait twice", findings);
        }
      }
      if (waiting.reason() == Waiting.Reason.NO_PROGRAM && hasProgram(plan, waiting)) {
        findings.batch(
            WeekRule.WAITING_WITHOUT_CAUSE,
            "",
            id,
            "Batch " + id + " is said to have no program, but a kiln has one.");
      }
    }
    for (WareLine line : plan.request().lines()) {
      for (int number = 1; number <= line.batch().quantity(); number++) {
        piece(ways, line, number, said.get(line.batch().id() + "#" + number), findings);
      }
    }
  }

  private static void piece(
      Ways ways, WareLine line, int number, Waiting waiting, WeekFindings findings) {
    String id = line.batch().id();
    Optional<FiringKind> missed =
        line.needs().stream().filter(kind -> ways.firings(id, number, kind).isEmpty()).findFirst();
    Optional<FiringKind> said = Optional.ofNullable(waiting).map(Waiting::kind);
    if (!missed.equals(said)) {
      unaccounted(
          id,
          number,
          "misses "
              + missed.map(Enum::name).orElse("nothing")
              + ", but the week says "
              + said.map(Enum::name).orElse("nothing"),
          findings);
    }
  }

  private static void unaccounted(String batchId, int number, String what, WeekFindings findings) {
    findings.batch(
        WeekRule.PIECE_UNACCOUNTED_FOR,
        "",
        batchId,
        "Piece " + number + " of batch " + batchId + " " + what + ".");
  }

  private static boolean hasProgram(WeekPlan plan, Waiting waiting) {
    Batch batch = plan.request().line(waiting.portion().batchId()).orElseThrow().batch();
    Optional<Glaze> glaze = batch.glazeId().flatMap(plan.request().studio()::glaze);
    Optional<Cone> cone = batch.cone().or(() -> glaze.map(Glaze::cone));
    Optional<Atmosphere> air = glaze.flatMap(Glaze::atmosphere);
    // Pieces of a set wait together: another of them may be the one without a program.
    return batch.set().isEmpty()
        && plan.request().kilns().stream()
            .flatMap(kiln -> kiln.programs().stream())
            .filter(program -> program.kind() == waiting.kind())
            .anyMatch(program -> program.kind() == FiringKind.BISQUE || takes(program, cone, air));
  }

  private static boolean takes(Program program, Optional<Cone> cone, Optional<Atmosphere> air) {
    return (cone.isEmpty() || cone.get().stepsFrom(program.cone()) <= program.coneTolerance())
        && (air.isEmpty() || air.get() == program.atmosphere());
  }
}
