package shelfful.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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
    return of(one.gained(after), one.group().size(), " goes in", " go in");
  }

  /** {@code It goes}, {@code Both go}, {@code All 5 go}, {@code 1 of 5 goes}, {@code 2 of 5 go}. */
  static String of(int some, int all, String singular, String plural) {
    if (all == 1) {
      return "It" + singular;
    }
    if (some >= all) {
      return (all == 2 ? "Both" : "All " + all) + plural;
    }
    return some + " of " + all + (some == 1 ? singular : plural);
  }

  /** The layers that took a piece of the group. */
  String where() {
    Set<String> alike = one.alike(after);
    return after.layers().stream()
        .filter(layer -> count(after, layer, alike) > count(one.load(), layer, alike))
        .map(Layer::id)
        .collect(Collectors.joining(" and "));
  }

  private static long count(Load load, Layer place, Set<String> alike) {
    return load.layers().stream()
        .filter(layer -> LayerPlace.of(layer).equals(LayerPlace.of(place)))
        .flatMap(layer -> layer.placements().stream())
        .filter(placed -> alike.contains(placed.pieceId()))
        .count();
  }

  /** What happens to furniture: {@code L2 stands on 152.4 mm posts}; empty text for nothing. */
  String furniture() {
    String posts =
        change.newHeights().entrySet().stream()
            .map(entry -> height(entry.getKey(), entry.getValue()))
            .collect(Collectors.joining(", "));
    String gone =
        change.emptied().isEmpty() ? "" : change.emptied().size() + " layer(s) fewer are built";
    return posts.isEmpty() || gone.isEmpty() ? posts + gone : posts + ", " + gone;
  }

  private String height(LayerPlace place, Length posts) {
    boolean isNew =
        one.load().layers().stream().noneMatch(layer -> LayerPlace.of(layer).equals(place));
    return (isNew ? "a shelf more, " + name(place) + "," : name(place))
        + " stands on posts of "
        + text(posts);
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

  /** Whether more than one piece waits for it. */
  boolean severalWait() {
    return change.waiting().values().stream().mapToInt(Integer::intValue).sum() > 1;
  }

  /** The count before and after. */
  String counts() {
    return String.format(Locale.ROOT, "%d in instead of %d", after.placed(), one.load().placed());
  }

  String text(Length length) {
    return LengthText.write(length, one.request().studio().unit());
  }
}
