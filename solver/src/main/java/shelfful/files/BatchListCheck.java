package shelfful.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shelfful.ware.Batch;

/**
 * Keeps the batches of a list that can be told apart, in their order, up to what a list may hold.
 */
final class BatchListCheck {
  /** Several kilns full many times over; more is a slip. */
  static final int MOST_PIECES = 10_000;

  private final Problems problems;
  private final List<Batch> kept = new ArrayList<>();
  private final Map<String, String> firstAt = new HashMap<>();
  private int pieces;

  BatchListCheck(Problems problems) {
    this.problems = problems;
  }

  /** Keeps the batch, or notes why not. */
  void add(Batch batch, String where) {
    add(batch, where, problems);
  }

  /** Keeps the batch, or notes why not among problems of the batch's own. */
  void add(Batch batch, String where, Problems notes) {
    String earlier = firstAt.putIfAbsent(FileName.key(batch.id()), where);
    if (earlier != null) {
      notes.add(
          where,
          "batch",
          "The batch " + Shown.quoted(batch.id()) + " is in the list already, at " + earlier + ".",
          "Give each batch an id of its own.");
    } else if (pieces + batch.quantity() > MOST_PIECES) {
      notes.add(
          where,
          "quantity",
          "With this batch the list holds more than " + MOST_PIECES + " pieces.",
          "Split the list.");
    } else {
      pieces += batch.quantity();
      kept.add(batch);
    }
  }

  /** The batches that were kept, in the list's order. */
  List<Batch> kept() {
    return List.copyOf(kept);
  }

  /** Usable if any batch is; the problems tell what was skipped. */
  ReadResult<List<Batch>> result() {
    if (!kept.isEmpty()) {
      return new ReadResult.Read<>(kept(), problems.all());
    }
    if (problems.faults() == 0) {
      problems.add(
          "", "", "There is no batch in the list.", "Add a line with a form and a quantity.");
    }
    return problems.refused();
  }
}
