package shelfful.drawing;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which printing of a plan this is, as the person who prints it says; written on every page.
 *
 * @param revision for instance {@code 4}
 * @param day of printing; nothing here reads a clock
 */
public record Edition(Optional<String> revision, Optional<LocalDate> day) {
  /** Says nothing of its own: the plan's mark alone tells printings apart. */
  public static final Edition UNSAID = new Edition(Optional.empty(), Optional.empty());

  /** For the foot of a page: {@code plan 7K3-QM2, revision 4, 2026-03-09}. */
  String words(PlanMark mark) {
    String told = "plan " + mark.shortForm();
    told += revision.map(one -> ", revision " + one).orElse("");
    return told + day.map(one -> ", " + one).orElse("");
  }
}
