package shelfful.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import shelfful.app.UsualFiring;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/** Checks the firing options against a studio, saying what is wrong and what there is. */
final class FiringChoice {
  private final FiringOptions options;
  private final PrintStream err;

  FiringChoice(FiringOptions options, PrintStream err) {
    this.options = options;
    this.err = err;
  }

  /** The kiln asked for, else the studio's first; empty with the reason told. */
  Optional<Kiln> kiln(Studio studio) {
    if (options.coneTolerance < 0) {
      err.println("--cone-tolerance must be at least 0, not " + options.coneTolerance + ".");
      return Optional.empty();
    }
    Optional<Kiln> kiln =
        options.kiln == null ? studio.kilns().stream().findFirst() : studio.kiln(options.kiln);
    if (kiln.isEmpty()) {
      List<String> known = studio.kilns().stream().map(Kiln::id).toList();
      err.println("--kiln: the studio has no kiln " + options.kiln + ". It has: " + list(known));
    }
    return kiln;
  }

  private Optional<Cone> cone(Kiln kiln, Optional<Cone> usual) {
    Optional<Cone> cone = options.cone == null ? usual : Cone.find(options.cone);
    if (cone.isEmpty()) {
      err.println(
          options.cone == null
              ? "Nothing on the list names a cone. Say which with --cone."
              : "--cone: there is no cone " + options.cone + ". Write it as 06, 6 or 10.");
      return cone;
    }
    if (kiln.hottest().isPresent() && cone.get().isHotterThan(kiln.hottest().get())) {
      err.println(
          "--cone: the kiln "
              + kiln.id()
              + " may only be fired to cone "
              + kiln.hottest().get().number()
              + ", not to "
              + cone.get().number()
              + ".");
      return Optional.empty();
    }
    return cone;
  }

  private boolean columnsKnown(Kiln kiln) {
    List<String> known = kiln.columnPlans().stream().map(ColumnPlan::id).toList();
    if (options.columns == null || known.contains(options.columns)) {
      return true;
    }
    err.println(
        "--columns: the kiln "
            + kiln.id()
            + " has no column plan "
            + options.columns
            + ". It has: "
            + list(known));
    return false;
  }

  /** What is asked for a list by these options, or empty when something of them is wrong. */
  Optional<LoadRequest> request(Studio studio, List<Batch> batches, long seed, long steps) {
    return kiln(studio).flatMap(kiln -> request(studio, kiln, batches, seed, steps));
  }

  /** The same for a kiln that was chosen already. */
  Optional<LoadRequest> request(
      Studio studio, Kiln kiln, List<Batch> batches, long seed, long steps) {
    Optional<Firing> usual = UsualFiring.of(studio, batches, kiln, options.kind);
    Optional<Cone> cone = cone(kiln, usual.map(Firing::cone));
    if (cone.isEmpty() || !columnsKnown(kiln)) {
      return Optional.empty();
    }
    Firing wanted =
        new Firing(kiln.id(), options.kind, cone.get(), options.coneTolerance, options.atmosphere);
    LocalDate day = options.day == null ? LocalDate.now() : options.day;
    return Optional.of(
        new LoadRequest(
            studio,
            batches,
            wanted,
            Optional.ofNullable(options.columns),
            Optional.of(day),
            seed,
            steps));
  }

  private static String list(List<String> known) {
    return String.join(", ", known) + ".";
  }
}
