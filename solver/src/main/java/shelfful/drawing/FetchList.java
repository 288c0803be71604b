package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Layer;

/** How many of each shelf, post and catcher a load needs from the cupboard. */
record FetchList(Setting setting, LengthWords words) {
  /** One thing to fetch. */
  record Item(int count, String name) {}

  List<Item> shelves() {
    Map<String, Long> counts =
        setting.layers().stream()
            .collect(Collectors.groupingBy(Layer::shelfId, TreeMap::new, Collectors.counting()));
    List<Item> items = new ArrayList<>();
    for (Shelf shelf : setting.studio().shelves()) {
      if (counts.containsKey(shelf.id())) {
        items.add(new Item(counts.get(shelf.id()).intValue(), shelf.name()));
      }
    }
    return items;
  }

  /** Posts by length, longest first in the order of the cupboard list where equal. */
  List<Item> posts() {
    Map<String, Long> counts =
        setting.load().posts().stream()
            .flatMap(post -> post.postIds().stream())
            .collect(Collectors.groupingBy(id -> id, TreeMap::new, Collectors.counting()));
    return setting.studio().posts().stream()
        .filter(post -> counts.containsKey(post.id()))
        .sorted((a, b) -> b.length().compareTo(a.length()))
        .map(post -> new Item(counts.get(post.id()).intValue(), named(post)))
        .toList();
  }

  private String named(Post post) {
    return words.full(post.length()) + " post";
  }

  List<Item> catchers() {
    int count =
        (int) setting.placed().stream().filter(piece -> piece.placement().onCatcher()).count();
    return count == 0 ? List.of() : List.of(new Item(count, "catcher"));
  }

  List<Item> all() {
    List<Item> items = new ArrayList<>(shelves());
    items.addAll(posts());
    items.addAll(catchers());
    return List.copyOf(items);
  }
}
