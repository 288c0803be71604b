package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/** No shelf passes through another or through a post, and no post through another. */
final class CollisionCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    List<LaidShelf> shelves = setting.shelves();
    for (int i = 0; i < shelves.size(); i++) {
      for (int j = i + 1; j < shelves.size(); j++) {
        shelves(shelves.get(i), shelves.get(j), findings);
      }
    }
    for (StoodPost post : setting.posts()) {
      for (LaidShelf shelf : shelves) {
        post(setting, post, shelf, findings);
      }
    }
    List<StoodPost> posts = setting.posts();
    for (int i = 0; i < posts.size(); i++) {
      for (int j = i + 1; j < posts.size(); j++) {
        posts(setting, posts.get(i), posts.get(j), findings);
      }
    }
  }

  private static void shelves(LaidShelf one, LaidShelf other, Findings findings) {
    if (one.heights().shares(other.heights()) && one.overlaps(other)) {
      findings.add(
          Rule.SHELVES_COLLIDE,
          one.id(),
          String.format(
              Locale.ROOT,
              "The shelves of layers %s and %s pass through each other. Set one higher or elsewhere.",
              one.id(),
              other.id()));
    }
  }

  private static void post(Setting setting, StoodPost post, LaidShelf shelf, Findings findings) {
    if (post.heights().shares(shelf.heights())
        && !Gap.isAtLeast(post.footprint(), shelf.footprint(), 0)) {
      findings.add(
          Rule.SHELVES_COLLIDE,
          shelf.id(),
          String.format(
              Locale.ROOT,
              "The shelf of layer %s passes through the post at %s. Set it higher or elsewhere.",
              shelf.id(),
              PostPlaceCheck.name(setting, post)));
    }
  }

  private static void posts(Setting setting, StoodPost one, StoodPost other, Findings findings) {
    if (one.heights().shares(other.heights())
        && !Gap.isAtLeast(one.footprint(), other.footprint(), 0)) {
      findings.add(
          Rule.POSTS_COLLIDE,
          String.format(
              Locale.ROOT,
              "The posts at %s and at %s stand in each other. Move one or use thinner posts.",
              PostPlaceCheck.name(setting, one),
              PostPlaceCheck.name(setting, other)));
    }
  }
}
