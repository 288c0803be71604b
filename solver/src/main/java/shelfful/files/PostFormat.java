package shelfful.files;

import java.util.Optional;
import shelfful.kiln.Post;
import shelfful.measure.Length;

/** A kind of post and how many there are. */
final class PostFormat {
  private static final int MOST = 1000;

  private PostFormat() {}

  static Optional<Post> read(FieldReader fields) {
    String id = fields.id("id");
    Length length = fields.length("length", LengthRange.SIZE);
    Length across = fields.length("across", LengthRange.SIZE);
    int count = fields.whole("count", 0, MOST);
    return fields.make(() -> new Post(id, length, across, count));
  }

  static void write(Post post, FieldWriter fields) {
    fields
        .text("id", post.id())
        .length("length", post.length())
        .length("across", post.across())
        .whole("count", post.count());
  }
}
