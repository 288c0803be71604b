package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import shelfful.kiln.Column;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.ware.Piece;

/**
 * Book-keeping of a load, without geometry: nothing is lost, nothing is used twice, sets are whole.
 * Counts everything anew from the load and its request.
 */
final class LoadAccount {
  private final Load load;
  private final List<String> wrong = new ArrayList<>();

  private LoadAccount(Load load) {
    this.load = load;
  }

  /** What does not add up, in words; empty when all does. */
  static List<String> wrong(Load load) {
    LoadAccount account = new LoadAccount(load);
    account.everyPieceOnce();
    account.leftOutInListOrder();
    account.leftOutSaysWhy();
    account.setsWhole();
    account.shelvesInStock();
    account.postsInStock();
    account.levelsComplete();
    account.shelvesCarryTheirMass();
    return account.wrong;
  }

  private List<Placement> placements() {
    return load.layers().stream().flatMap(layer -> layer.placements().stream()).toList();
  }

  private void everyPieceOnce() {
    Map<String, Integer> met = new HashMap<>();
    placements().forEach(placement -> met.merge(placement.pieceId(), 1, Integer::sum));
    load.leftOut().forEach(out -> met.merge(out.pieceId(), 1, Integer::sum));
    for (Piece piece : load.request().pieces()) {
      Integer times = met.remove(piece.id());
      if (times == null || times != 1) {
        wrong.add(piece.id() + " is met " + times + " times");
      }
    }
    met.keySet().forEach(id -> wrong.add(id + " is not on the list"));
  }

  private void leftOutInListOrder() {
    List<String> waiting = load.leftOut().stream().map(LeftOut::pieceId).toList();
    Set<String> known = new HashSet<>(waiting);
    List<String> wanted =
        load.request().pieces().stream().map(Piece::id).filter(known::contains).toList();
    if (!waiting.equals(wanted)) {
      wrong.add("what waits is not in list order: " + waiting);
    }
  }

  private void leftOutSaysWhy() {
    for (LeftOut out : load.leftOut()) {
      boolean said = out.sentence().endsWith(".") && out.mend().endsWith(".");
      if (!said || (out.sentence() + out.mend()).contains("null")) {
        wrong.add(out + " is no plain sentence");
      }
    }
  }

  private void setsWhole() {
    Set<String> in = new HashSet<>();
    placements().forEach(placement -> in.add(placement.pieceId()));
    Map<String, Set<Boolean>> fates = new TreeMap<>();
    for (Piece piece : load.request().pieces()) {
      fates.computeIfAbsent(piece.setKey(), key -> new HashSet<>()).add(in.contains(piece.id()));
    }
    fates.forEach((set, fate) -> addIf(fate.size() > 1, set + " is split"));
  }

  private void shelvesInStock() {
    Map<String, Integer> used = new TreeMap<>();
    load.layers().forEach(layer -> used.merge(layer.shelfId(), 1, Integer::sum));
    used.forEach(
        (id, count) ->
            addIf(
                count > load.request().studio().shelf(id).orElseThrow().count(),
                count + " shelves " + id + " are used"));
  }

  private void postsInStock() {
    Map<String, Integer> used = new TreeMap<>();
    for (StandingPost post : load.posts()) {
      post.postIds().forEach(id -> used.merge(id, 1, Integer::sum));
      addIf(
          post.postIds().size() > load.request().studio().rules().mostPostPieces(),
          "a post of " + post.postIds().size() + " pieces");
    }
    used.forEach(
        (id, count) ->
            addIf(
                count > load.request().studio().post(id).orElseThrow().count(),
                count + " posts " + id + " are used"));
  }

  /** Each level of a column has a shelf in every place, and levels count up from 1. */
  private void levelsComplete() {
    Set<String> expected = new LinkedHashSet<>();
    Set<String> met = new LinkedHashSet<>();
    for (Column column : plan()) {
      int levels =
          load.layers().stream()
              .filter(layer -> layer.columnId().equals(column.id()))
              .mapToInt(Layer::level)
              .max()
              .orElse(0);
      for (int level = 1; level <= levels; level++) {
        for (int place = 0; place < column.places().size(); place++) {
          expected.add(column.id() + "/" + level + "/" + place);
        }
      }
    }
    Set<String> ids = new HashSet<>();
    for (Layer layer : load.layers()) {
      boolean first = met.add(layer.columnId() + "/" + layer.level() + "/" + layer.place());
      addIf(!first || !ids.add(layer.id()), "the layer " + layer.id() + " is there twice");
    }
    addIf(!met.equals(expected), "levels are " + met + ", not " + expected);
  }

  private List<Column> plan() {
    var request = load.request();
    return request.kiln().columnPlans().stream()
        .filter(plan -> plan.id().equals(load.columnPlanId()))
        .findFirst()
        .orElseThrow()
        .columns();
  }

  private void shelvesCarryTheirMass() {
    Map<String, Piece> pieces = new HashMap<>();
    load.request().pieces().forEach(piece -> pieces.put(piece.id(), piece));
    for (Layer layer : load.layers()) {
      long grams = 0;
      for (Placement placement : layer.placements()) {
        grams += grams(pieces.get(placement.pieceId()), placement.onCatcher());
      }
      var limit = load.request().studio().shelf(layer.shelfId()).orElseThrow().massLimit();
      addIf(
          limit.isPresent() && limit.get().grams() < grams,
          layer.id() + " carries " + grams + " g");
    }
  }

  private long grams(Piece piece, boolean onCatcher) {
    var form = load.request().studio().form(piece.batch().formId()).orElseThrow();
    long lid = form.lid().map(l -> l.mass().grams()).orElse(0L);
    long grams =
        switch (piece.part()) {
          case POT -> form.mass().grams();
          case POT_WITH_LID -> form.mass().grams() + lid;
          case LID -> lid;
        };
    return grams + (onCatcher ? load.request().studio().rules().catcher().mass().grams() : 0);
  }

  private void addIf(boolean isWrong, String words) {
    if (isWrong) {
      wrong.add(words);
    }
  }
}
