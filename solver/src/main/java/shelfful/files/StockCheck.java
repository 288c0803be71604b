package shelfful.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Post;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Length;
import shelfful.studio.Studio;

/**
 * Warns of a column that the cupboard cannot build even one level of. Only a warning: a broken
 * shelf must not keep a studio from being opened.
 */
final class StockCheck {
  private final Studio studio;
  private final FieldReader document;

  StockCheck(Studio studio, FieldReader document) {
    this.studio = studio;
    this.document = document;
  }

  void check(ColumnPlan plan) {
    // Parts that were wrong in themselves are missing here, and would be warned of in vain.
    if (!document.isStillGood()) {
      return;
    }
    for (Column column : plan.columns()) {
      Length least =
          column.standsOn().isEmpty() ? studio.rules().clearances().offFloor() : Length.ZERO;
      int posts = column.posts().size();
      if (!postsSuffice(posts, least)) {
        warn(
            column,
            "posts",
            "There are no " + posts + " equal posts in stock to carry one level of it.");
      }
      if (!shelvesSuffice(column.places())) {
        warn(column, "places", "There are not enough shelves in stock for one level of it.");
      }
    }
  }

  private boolean postsSuffice(int needed, Length least) {
    List<Post> posts = studio.posts();
    for (int i = 0; i < posts.size(); i++) {
      Post post = posts.get(i);
      if (post.count() >= needed && !least.isLongerThan(post.length())) {
        return true;
      }
      for (int j = 0; j <= i && studio.rules().mostPostPieces() > 1; j++) {
        if (pairSuffices(post, posts.get(j), needed, least)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean pairSuffices(Post post, Post other, int needed, Length least) {
    boolean enough =
        post == other
            ? post.count() >= 2 * needed
            : Math.min(post.count(), other.count()) >= needed;
    return enough
        && post.across().equals(other.across())
        && !least.isLongerThan(post.length().plus(other.length()));
  }

  /** Takes the preferred kind first, as a person would; places that differ are rare. */
  private boolean shelvesSuffice(List<ShelfPlace> places) {
    Map<String, Integer> left = new HashMap<>();
    studio.shelves().forEach(shelf -> left.put(shelf.id(), shelf.count()));
    for (ShelfPlace place : places) {
      Optional<String> taken =
          place.shelfIds().stream().filter(id -> left.getOrDefault(id, 0) > 0).findFirst();
      if (taken.isEmpty()) {
        return false;
      }
      left.merge(taken.get(), -1, Integer::sum);
    }
    return true;
  }

  private void warn(Column column, String field, String wrong) {
    document
        .problems()
        .warn(
            document.madeAt().pathOf(column) + "/" + field,
            field,
            wrong,
            "Raise the count in stock, or use another column plan.");
  }
}
