package shelfful.inspect;

import java.util.Locale;

/** A post stands on the floor, or on a shelf straight over another post. */
final class PostStackCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (StoodPost post : setting.posts()) {
      if (post.base() != 0 && !standsOverPost(setting, post)) {
        findings.add(
            Rule.POST_NOT_ON_POST,
            carriedBy(post),
            String.format(
                Locale.ROOT,
                "The post at %s, standing %s high, is not straight over another post. Stand posts over posts.",
                PostPlaceCheck.name(setting, post),
                setting.wording().length(post.base())));
      }
    }
  }

  private static String carriedBy(StoodPost post) {
    return post.standing().carries().isEmpty() ? "" : post.standing().carries().get(0);
  }

  private static boolean standsOverPost(Setting setting, StoodPost post) {
    for (LaidShelf shelf : setting.shelves()) {
      boolean standsOn =
          shelf.top() == post.base()
              && Gap.between(post.footprint(), shelf.footprint(), 1).micrometres() <= 0;
      if (standsOn
          && setting.posts().stream()
              .anyMatch(
                  under -> under.top() == shelf.underside() && under.standsAt(post.middle()))) {
        return true;
      }
    }
    return false;
  }
}
