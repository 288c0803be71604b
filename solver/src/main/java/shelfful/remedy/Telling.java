package shelfful.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.ware.Batch;

/** The words of a remedy. */
final class Telling {
  private final WaitingCase one;
  private final Load after;
  private final Change change;

  Telling(WaitingCase one, InspectedLoad after) {
    this.one = one;
    this.after = after.load();
    this.change = Change.between(one.load(), after.load());
  }

  Change change() {
    return change;
  }

  /** {@code 2 of 5 go in}. */
  String goIn() {
    int gained = one.gained(after);
    int all = one.group().size();
    if (all == 1) {
      return "It goes in";
    }
    return gained >= all
        ? "All " + all + " go in"
        : gained + " of " + all + (gained == 1 ? " goes in" : " go in");
  }

  /** The layers that took a piece of the group. */
  String where() {
    String batch = one.group().batch().id();
    return after.layers().stream()
        .filter(layer -> count(after, layer, batch) > count(one.load(), layer, batch))
        .map(Layer::id)
        .collect(Collectors.joining(" and "));
  }

  private static long count(Load load, Layer place, String batchId) {
    return load.layers().stream()
        .filter(layer -> LayerPlace.of(layer).equals(LayerPlace.of(place)))
        .flatMap(layer -> layer.placements().stream())
        .filter(placed -> placed.pieceId().startsWith(batchId + "-"))
        .count();
  }

  /** What happens to furniture: {@code L2 stands on 152.4 mm posts}; empty text for nothing. */
  String furniture() {
    String posts =
        change.newHeights().entrySet().stream()
            .map(entry -> name(entry.getKey()) + " stands on posts of " + text(entry.getValue()))
            .collect(Collectors.joining(", "));
    String gone =
        change.emptied().isEmpty() ? "" : change.emptied().size() + " layer(s) fewer are built";
    return posts.isEmpty() || gone.isEmpty() ? posts + gone : posts + ", " + gone;
  }

  private String name(LayerPlace place) {
    return after.layers().stream()
        .filter(layer -> LayerPlace.of(layer).equals(place))
        .map(Layer::id)
        .findFirst()
        .orElse(place.columnId() + " " + place.level());
  }

  /** How much ware is set elsewhere. */
  String moved() {
    return change.moved() == 0
        ? "nothing else moves"
        : change.moved() == 1 ? "1 other piece moves" : change.moved() + " other pieces move";
  }

  /** What waits for it: {@code 2 x mug in clear-gloss (B01)}. */
  String waiting() {
    return listed(change.waiting());
  }

  private String listed(Map<String, Integer> counts) {
    List<Batch> batches = one.request().batches();
    return counts.entrySet().stream()
        .map(entry -> entry.getValue() + " x " + named(batches, entry.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static String named(List<Batch> batches, String batchId) {
    return batches.stream()
        .filter(batch -> batch.id().equals(batchId))
        .findFirst()
        .map(
            batch ->
                batch.formId()
                    + batch.glazeId().map(glaze -> " in " + glaze).orElse("")
                    + " ("
                    + batchId
                    + ")")
        .orElse(batchId);
  }

  /** The count before and after. */
  String counts() {
    return String.format(Locale.ROOT, "%d in instead of %d", after.placed(), one.load().placed());
  }

  String text(Length length) {
    return LengthText.write(length, one.request().studio().unit());
  }
}
