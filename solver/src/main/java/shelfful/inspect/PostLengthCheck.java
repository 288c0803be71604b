package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import shelfful.kiln.Column;

/**
 * The posts of a level reach exactly from what they stand on to the shelf's underside, which makes
 * them equally long.
 */
final class PostLengthCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (LaidShelf shelf : setting.shelves()) {
      List<StoodPost> posts = setting.posts().stream().filter(post -> post.carries(shelf)).toList();
      long base = base(setting, shelf);
      for (StoodPost post : posts) {
        reach(setting, shelf, post, base, findings);
      }
    }
  }

  /**
   * What the posts under a shelf stand on: the level below in its column, or what the column stands
   * on.
   */
  private static long base(Setting setting, LaidShelf shelf) {
    Column column = shelf.column();
    return setting.level(column, shelf.layer().level() - 1).stream()
        .mapToLong(LaidShelf::top)
        .max()
        .orElseGet(() -> setting.baseOf(column));
  }

  private static void reach(
      Setting setting, LaidShelf shelf, StoodPost post, long base, Findings findings) {
    Wording wording = setting.wording();
    if (post.base() != base) {
      findings.add(
          Rule.POST_LENGTH_WRONG,
          shelf.id(),
          String.format(
              Locale.ROOT,
              "The post at %s under layer %s starts at %s, the height of what it stands on. Correct its base.",
              PostPlaceCheck.name(setting, post),
              shelf.id(),
              wording.butIs(post.base(), base)));
    }
    if (post.top() != shelf.underside()) {
      findings.add(
          Rule.POST_LENGTH_WRONG,
          shelf.id(),
          String.format(
              Locale.ROOT,
              "The post at %s ends at %s, the underside of layer %s. Use posts of the right length.",
              PostPlaceCheck.name(setting, post),
              wording.butIs(post.top(), shelf.underside()),
              shelf.id()));
    }
  }
}
