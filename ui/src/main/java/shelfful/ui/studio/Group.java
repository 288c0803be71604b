package shelfful.ui.studio;

import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.studio.Studio;

/**
 * Fields that belong together on a page.
 *
 * @param title in words
 * @param fields in the order they are gone through
 * @param steps what else can be done here, such as adding a band
 */
public record Group(String title, List<Field> fields, List<Step> steps) {
  /** Takes its own copies. */
  public Group {
    fields = List.copyOf(fields);
    steps = List.copyOf(steps);
  }

  /**
   * A change at one press.
   *
   * @param label in words
   * @param change of the studio
   */
  public record Step(String label, UnaryOperator<Studio> change) {}

  /** Whether a page could keep its controls when this group takes another's place. */
  boolean looksLike(Group other) {
    if (!title.equals(other.title)
        || fields.size() != other.fields.size()
        || !steps.stream()
            .map(Step::label)
            .toList()
            .equals(other.steps.stream().map(Step::label).toList())) {
      return false;
    }
    for (int i = 0; i < fields.size(); i++) {
      if (!fields.get(i).looksLike(other.fields.get(i))) {
        return false;
      }
    }
    return true;
  }
}
