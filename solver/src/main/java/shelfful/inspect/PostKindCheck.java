package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import shelfful.load.StandingPost;

/** A standing post is made of as many pieces as the house allows, all of one section. */
final class PostKindCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    int most = setting.rules().mostPostPieces();
    for (StandingPost post : setting.load().posts()) {
      int pieces = post.postIds().size();
      if (pieces < 1 || pieces > most) {
        findings.add(
            Rule.POST_WRONG,
            layerOf(post),
            String.format(
                Locale.ROOT,
                "The post at x %s, y %s is made of %d pieces, but 1 to %d are allowed. Use other posts.",
                setting.wording().length(post.at().x().micrometres()),
                setting.wording().length(post.at().y().micrometres()),
                pieces,
                most));
      }
    }
    for (StoodPost post : setting.posts()) {
      List<Long> sections =
          post.pieces().stream().map(kind -> kind.across().micrometres()).distinct().toList();
      if (sections.size() > 1) {
        findings.add(
            Rule.POST_WRONG,
            layerOf(post.standing()),
            String.format(
                Locale.ROOT,
                "The post at %s is made of pieces %s and %s across. Stack posts of one section.",
                PostPlaceCheck.name(setting, post),
                setting.wording().length(sections.get(0)),
                setting.wording().length(sections.get(1))));
      }
    }
  }

  private static String layerOf(StandingPost post) {
    return post.carries().isEmpty() ? "" : post.carries().get(0);
  }
}
