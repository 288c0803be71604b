package shelfful.inspect;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Layer;
import shelfful.load.StandingPost;

/** No more shelves and posts of a kind are used than there are. */
final class StockCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Map<String, Integer> shelves = new TreeMap<>();
    for (Layer layer : setting.load().layers()) {
      shelves.merge(layer.shelfId(), 1, Integer::sum);
    }
    for (Shelf shelf : setting.request().studio().shelves()) {
      int used = shelves.getOrDefault(shelf.id(), 0);
      if (used > shelf.count()) {
        findings.add(
            Rule.SHELVES_OUT_OF_STOCK,
            String.format(
                Locale.ROOT,
                "%d of the shelf %s are used, but there are %d. Use others.",
                used,
                shelf.name(),
                shelf.count()));
      }
    }
    Map<String, Integer> posts = new TreeMap<>();
    for (StandingPost standing : setting.load().posts()) {
      standing.postIds().forEach(id -> posts.merge(id, 1, Integer::sum));
    }
    for (Post post : setting.request().studio().posts()) {
      int used = posts.getOrDefault(post.id(), 0);
      if (used > post.count()) {
        findings.add(
            Rule.POSTS_OUT_OF_STOCK,
            String.format(
                Locale.ROOT,
                "%d of the post %s, %s long, are used, but there are %d. Use others.",
                used,
                post.id(),
                setting.wording().length(post.length().micrometres()),
                post.count()));
      }
    }
  }
}
