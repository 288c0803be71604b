package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import shelfful.kiln.Column;
import shelfful.kiln.ShelfPlace;

/**
 * At every level of a column, from the lowest without a break, one shelf of a fitting kind in every
 * place.
 */
final class ShelfPlaceCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (Column column : setting.columns()) {
      TreeSet<Integer> levels = new TreeSet<>();
      setting.shelvesOf(column).forEach(shelf -> levels.add(shelf.layer().level()));
      int expected = 1;
      for (int level : levels) {
        if (level != expected) {
          add(
              findings,
              setting.level(column, level).get(0),
              String.format(
                  Locale.ROOT,
                  "Column %s has level %d, but no level %d. Number its levels from 1 without a break.",
                  column.id(),
                  level,
                  expected));
        }
        expected = level + 1;
        level(setting, column, setting.level(column, level), findings);
      }
    }
  }

  private static void level(
      Setting setting, Column column, List<LaidShelf> level, Findings findings) {
    LaidShelf first = level.get(0);
    for (int place = 0; place < column.places().size(); place++) {
      int wanted = place;
      long there = level.stream().filter(shelf -> shelf.layer().place() == wanted).count();
      if (there != 1) {
        add(
            findings,
            first,
            String.format(
                Locale.ROOT,
                "Place %d of column %s has %d shelves at level %d. Lay one there.",
                place + 1,
                column.id(),
                there,
                first.layer().level()));
      }
    }
    for (LaidShelf shelf : level) {
      ShelfPlace place = column.places().get(shelf.layer().place());
      if (!place.shelfIds().contains(shelf.shelf().id())) {
        add(
            findings,
            shelf,
            String.format(
                Locale.ROOT,
                "The shelf %s of layer %s does not belong in its place, which takes %s. Use one of those.",
                shelf.shelf().id(),
                shelf.id(),
                Wording.names(place.shelfIds())));
      }
    }
    heights(setting, column, level, findings);
  }

  private static void heights(
      Setting setting, Column column, List<LaidShelf> level, Findings findings) {
    long lowest = level.stream().mapToLong(LaidShelf::top).min().orElseThrow();
    long highest = level.stream().mapToLong(LaidShelf::top).max().orElseThrow();
    if (lowest != highest) {
      add(
          findings,
          level.get(0),
          String.format(
              Locale.ROOT,
              "A shelf of level %d of column %s lies at %s, another's height. Set them equally high.",
              level.get(0).layer().level(),
              column.id(),
              setting.wording().butIs(highest, lowest)));
    }
  }

  private static void add(Findings findings, LaidShelf shelf, String sentence) {
    findings.add(Rule.SHELF_NOT_IN_PLACE, shelf.id(), sentence);
  }
}
