package shelfful.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shelfful.load.StandingPost;
import shelfful.measure.Length;

/** Standing posts as people fetch them. */
record PostWords(Setting setting, LengthWords words) {
  /** How many of which length: {@code 3 × 152.4 mm}, {@code 3 × (152.4 + 25.4) mm}. */
  String counted(List<StandingPost> posts) {
    return counted(posts, " " + words.unitName());
  }

  /** The same without the unit, for tables that name it once. */
  String countedBare(List<StandingPost> posts) {
    return counted(posts, "");
  }

  private String counted(List<StandingPost> posts, String unit) {
    Map<List<Length>, Integer> counts = new LinkedHashMap<>();
    posts.forEach(post -> counts.merge(setting.lengths(post), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(entry -> entry.getValue() + " × " + grouped(entry.getKey()) + unit)
        .map(one -> one.replace(' ', Wording.TIED))
        .collect(Collectors.joining(", "));
  }

  private String grouped(List<Length> lengths) {
    return lengths.size() == 1 ? words.stacked(lengths) : "(" + words.stacked(lengths) + ")";
  }

  /** The lengths alone, each make-up once: {@code 152.4 + 25.4}. */
  String lengths(List<StandingPost> posts) {
    return posts.stream()
        .map(post -> words.stacked(setting.lengths(post)))
        .distinct()
        .collect(Collectors.joining(" or "));
  }
}
