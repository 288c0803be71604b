package shelfful.ware;

import java.util.List;
import shelfful.measure.Length;

/**
 * The room inside a form that small forms may be set in.
 *
 * @param clear what is free at every height from the hollow's floor upwards, about the form's axis
 * @param deep from the rim (the form's full height) down to the hollow's floor
 * @param formIds forms that may stand in it; at least one, in the order of their names
 */
public record Hollow(Outline clear, Length deep, List<String> formIds) {
  /** Takes its own copy; refuses a hollow without depth, and one for no form. */
  public Hollow {
    formIds = formIds.stream().distinct().sorted().toList();
    if (!deep.isPositive()) {
      throw new IllegalArgumentException("A hollow must be more than 0 deep");
    }
    if (formIds.isEmpty()) {
      throw new IllegalArgumentException("A hollow must name at least one form that stands in it");
    }
  }
}
