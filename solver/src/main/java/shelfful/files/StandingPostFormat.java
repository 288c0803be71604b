package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** A post as it stands in a plan. */
final class StandingPostFormat {
  private StandingPostFormat() {}

  static Optional<StandingPost> read(FieldReader fields) {
    Length x = fields.length("x", LengthRange.PLACE);
    Length y = fields.length("y", LengthRange.PLACE);
    Length base = fields.length("base", LengthRange.PLACE);
    List<String> posts = fields.ids("posts");
    List<String> carries =
        fields.values("carries", node -> FieldReader.text(node).then(FileName::name));
    return fields.make(() -> new StandingPost(new Point(x, y), base, posts, carries));
  }

  static void write(StandingPost post, FieldWriter fields) {
    fields
        .length("x", post.at().x())
        .length("y", post.at().y())
        .length("base", post.base())
        .texts("posts", post.postIds())
        .texts("carries", post.carries());
  }
}
