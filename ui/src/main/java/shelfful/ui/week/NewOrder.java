package shelfful.ui.week;

import java.time.LocalDate;
import java.util.Optional;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/**
 * An order that may come in, as it is typed.
 *
 * @param formId the form
 * @param formName what people call it
 * @param glazeId the glaze; empty for ware that is not glazed
 * @param stage the ware is at when the week begins
 * @param quantity as typed
 * @param due the day it must be finished
 */
public record NewOrder(
    String formId,
    String formName,
    Optional<String> glazeId,
    Stage stage,
    String quantity,
    LocalDate due) {

  /** A line for the list with an id of its own; empty when the quantity is no number of pieces. */
  Optional<WareLine> line(WeekRequest request) {
    String typed = quantity.strip();
    int pieces = typed.matches("[0-9]{1,4}") ? Integer.parseInt(typed) : 0;
    if (pieces < 1 || pieces > Batch.MOST_PIECES) {
      return Optional.empty();
    }
    Batch batch =
        new Batch(
            freeId(request),
            formId,
            glazeId,
            pieces,
            stage,
            Optional.empty(),
            false,
            1,
            Optional.of(due),
            Optional.empty(),
            Optional.empty(),
            LidPlace.ON);
    return Optional.of(new WareLine(batch, Optional.empty(), Optional.empty()));
  }

  private static String freeId(WeekRequest request) {
    int number = 1;
    while (request.line("N" + number).isPresent()) {
      number++;
    }
    return "N" + number;
  }
}
