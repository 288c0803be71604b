package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.KeptProblem;
import shelfful.load.KeptProblem.Code;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PostUnder;

/** Whether the locked layers have their shelves and posts, and all that they stand on. */
final class LockedNames {
  private final LoadRequest request;
  private final ColumnPlan plan;
  private final Set<LayerPlace> locked;
  private final List<KeptProblem> problems = new ArrayList<>();

  private LockedNames(LoadRequest request, KeptSetting kept, ColumnPlan plan) {
    this.request = request;
    this.plan = plan;
    this.locked = kept.layers().stream().map(LockedLayer::layer).collect(Collectors.toSet());
  }

  static List<KeptProblem> problems(LoadRequest request, KeptSetting kept, ColumnPlan plan) {
    LockedNames names = new LockedNames(request, kept, plan);
    for (LockedLayer layer : kept.layers()) {
      names.shelf(layer);
      layer.posts().forEach(post -> names.post(layer, post));
      names.below(layer.layer());
    }
    if (names.problems.isEmpty()) {
      names.stock(kept);
    }
    return names.problems;
  }

  private void shelf(LockedLayer layer) {
    Column column = KeptNames.column(plan, layer.layer().columnId()).orElseThrow();
    Optional<Shelf> shelf = request.studio().shelf(layer.shelfId());
    boolean lies = column.places().get(layer.layer().place()).shelfIds().contains(layer.shelfId());
    boolean tooHot =
        shelf
            .flatMap(Shelf::hottest)
            .filter(hottest -> request.firing().cone().isHotterThan(hottest))
            .isPresent();
    if (shelf.isEmpty() || !lies || tooHot) {
      wrong(layer, "has the shelf " + layer.shelfId() + ", which may not lie there");
    } else if (layer.posts().isEmpty()) {
      wrong(layer, "has no posts under it");
    }
  }

  private void post(LockedLayer layer, PostUnder post) {
    long top = post.base().micrometres();
    for (String id : post.postIds()) {
      Optional<Post> kind = request.studio().post(id);
      if (kind.isEmpty()) {
        wrong(layer, "stands on a post " + id + ", which the studio does not have");
        return;
      }
      top += kind.get().length().micrometres();
    }
    Column column = KeptNames.column(plan, layer.layer().columnId()).orElseThrow();
    if (!column.posts().contains(post.at())) {
      wrong(layer, "stands on a post where its column has none");
    }
    Optional<Shelf> shelf = request.studio().shelf(layer.shelfId());
    long z = top + shelf.map(s -> s.thickness().micrometres()).orElse(0L);
    if (shelf.isPresent() && z != layer.z().micrometres()) {
      wrong(layer, "is not as high as its posts make it");
    }
  }

  private void below(LayerPlace layer) {
    Set<String> under = KeptSetting.columnsUnder(plan, layer.columnId());
    boolean open = layer.level() > 1 && !isLocked(layer.columnId(), layer.level() - 1);
    boolean lowerOpen =
        under.stream()
            .flatMap(id -> locked.stream().filter(at -> at.columnId().equals(id)))
            .anyMatch(at -> at.level() > 1 && !isLocked(at.columnId(), at.level() - 1));
    if (open || lowerOpen) {
      problems.add(
          new KeptProblem(
              Code.NOT_LOCKED_BELOW,
              List.of(),
              named(layer) + " is locked, but not every layer that it stands on.",
              "Lock those under it too: a locked layer holds all below it in its column."));
    }
  }

  private boolean isLocked(String column, int level) {
    int places = KeptNames.column(plan, column).map(c -> c.places().size()).orElse(0);
    for (int place = 0; place < places; place++) {
      if (!locked.contains(new LayerPlace(column, level, place))) {
        return false;
      }
    }
    return true;
  }

  private void stock(KeptSetting kept) {
    Map<String, Integer> shelves = new HashMap<>();
    Map<String, Integer> posts = new HashMap<>();
    kept.layers().forEach(layer -> shelves.merge(layer.shelfId(), 1, Integer::sum));
    kept.layers().stream()
        .flatMap(layer -> layer.posts().stream())
        .distinct()
        .flatMap(post -> post.postIds().stream())
        .forEach(id -> posts.merge(id, 1, Integer::sum));
    shelves.forEach(
        (id, used) -> tooFew("shelves", id, used, request.studio().shelf(id).get().count()));
    posts.forEach((id, used) -> tooFew("posts", id, used, request.studio().post(id).get().count()));
  }

  private void tooFew(String what, String id, int used, int there) {
    if (used > there) {
      problems.add(
          new KeptProblem(
              Code.LOCKED_LAYER_WRONG,
              List.of(),
              String.format(
                  Locale.ROOT,
                  "The locked layers take %d %s %s; there are %d.",
                  used,
                  what,
                  id,
                  there),
              "Unlock a layer."));
    }
  }

  private void wrong(LockedLayer layer, String what) {
    problems.add(
        new KeptProblem(
            Code.LOCKED_LAYER_WRONG,
            List.of(),
            named(layer.layer()) + " is locked and " + what + ".",
            "Unlock it, or put back what it was made of."));
  }

  private static String named(LayerPlace layer) {
    return String.format(Locale.ROOT, "Layer %d of column %s", layer.level(), layer.columnId());
  }
}
