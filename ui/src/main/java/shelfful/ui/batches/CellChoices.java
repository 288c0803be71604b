package shelfful.ui.batches;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/** What can be chosen for a cell instead of typing it. */
final class CellChoices {
  private CellChoices() {}

  static List<String> of(String heading, Studio studio) {
    return switch (heading) {
      case "form" -> studio.forms().stream().map(Form::id).toList();
      case "glaze" -> studio.glazes().stream().map(Glaze::id).toList();
      case "stage" -> Arrays.stream(Stage.values()).map(CellChoices::word).toList();
      case "cone" -> Cone.NUMBERS;
      case "must_go" -> List.of("yes", "");
      case "lid" -> Arrays.stream(LidPlace.values()).map(CellChoices::word).toList();
      default -> List.of();
    };
  }

  /** As files write it. */
  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
