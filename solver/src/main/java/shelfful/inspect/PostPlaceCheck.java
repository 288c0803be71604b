package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shelfful.kiln.Column;
import shelfful.measure.Point;

/**
 * Every level of a column has one post at each of the column's positions, and every post belongs to
 * one level.
 */
final class PostPlaceCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (StoodPost post : setting.posts()) {
      carried(setting, post, findings);
    }
    for (Column column : setting.columns()) {
      List<LaidShelf> shelves = setting.shelvesOf(column);
      for (int level : shelves.stream().map(shelf -> shelf.layer().level()).distinct().toList()) {
        positions(setting, column, setting.level(column, level), findings);
      }
    }
  }

  static String name(Setting setting, StoodPost post) {
    return String.format(
        Locale.ROOT,
        "x %s, y %s",
        setting.wording().length(post.footprint().x()),
        setting.wording().length(post.footprint().y()));
  }

  private static void carried(Setting setting, StoodPost post, Findings findings) {
    List<LaidShelf> carried = setting.shelves().stream().filter(post::carries).toList();
    long levels =
        carried.stream()
            .map(shelf -> shelf.column().id() + "\n" + shelf.layer().level())
            .distinct()
            .count();
    if (levels != 1) {
      findings.add(
          Rule.POST_NOT_IN_PLACE,
          String.format(
              Locale.ROOT,
              "The post at %s carries shelves of %d levels. Let it carry one level, or take it out.",
              name(setting, post),
              levels));
    }
    for (LaidShelf shelf : setting.shelves()) {
      boolean under =
          post.top() == shelf.underside()
              && Gap.between(post.footprint(), shelf.footprint(), 1).micrometres() <= 0;
      if (under && !post.carries(shelf)) {
        findings.add(
            Rule.POST_NOT_IN_PLACE,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The shelf of layer %s lies on the post at %s, which is not said to carry it. Say so.",
                shelf.id(),
                name(setting, post)));
      }
    }
  }

  private static void positions(
      Setting setting, Column column, List<LaidShelf> level, Findings findings) {
    List<StoodPost> posts =
        setting.posts().stream().filter(post -> level.stream().anyMatch(post::carries)).toList();
    LaidShelf first = level.get(0);
    for (Point position : column.posts()) {
      Vector point = Vector.of(position);
      long there = posts.stream().filter(post -> post.standsAt(point)).count();
      if (there != 1) {
        findings.add(
            Rule.POST_NOT_IN_PLACE,
            first.id(),
            String.format(
                Locale.ROOT,
                "Under %s there are %d posts at x %s, y %s. Stand one there.",
                idsOf(level.stream()),
                there,
                setting.wording().length(position.x().micrometres()),
                setting.wording().length(position.y().micrometres())));
      }
    }
    for (StoodPost post : posts) {
      if (column.posts().stream().noneMatch(point -> post.standsAt(Vector.of(point)))) {
        findings.add(
            Rule.POST_NOT_IN_PLACE,
            first.id(),
            String.format(
                Locale.ROOT,
                "The post at %s under %s is at no position of column %s. Stand it at one of them.",
                name(setting, post),
                idsOf(level.stream()),
                column.id()));
      }
    }
  }

  private static String idsOf(Stream<LaidShelf> shelves) {
    return shelves.map(LaidShelf::id).collect(Collectors.joining(" and "));
  }
}
