package shelfful.inspect;

import java.util.Locale;
import java.util.Optional;
import shelfful.kiln.Column;

/** The lowest shelves are high enough over the floor; what a column stands on is equally high. */
final class ColumnCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Wording wording = setting.wording();
    long offFloor = setting.clearances().offFloor().micrometres();
    for (LaidShelf shelf : setting.shelves()) {
      if (shelf.underside() < offFloor) {
        findings.add(
            Rule.SHELF_TOO_LOW,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The height of layer %s's underside over the floor is %s. Use longer posts under it.",
                shelf.id(),
                wording.butNeeds(shelf.underside(), offFloor)));
      }
    }
    for (Column column : setting.columns()) {
      if (!setting.shelvesOf(column).isEmpty()) {
        tops(setting, column, findings);
      }
    }
  }

  private static void tops(Setting setting, Column column, Findings findings) {
    Optional<Column> first = column.standsOn().stream().findFirst().flatMap(setting::column);
    for (String id : column.standsOn()) {
      Optional<Column> below = setting.column(id);
      if (below.isPresent() && setting.topOf(below.get()) != setting.topOf(first.orElseThrow())) {
        findings.add(
            Rule.COLUMN_TOPS_DISAGREE,
            setting.shelvesOf(column).get(0).id(),
            String.format(
                Locale.ROOT,
                "Column %s stands on %s and %s: the top of the second is at %s, the first's. Make both equally high.",
                column.id(),
                first.get().id(),
                id,
                setting.wording().butIs(setting.topOf(below.get()), setting.topOf(first.get()))));
      }
    }
  }
}
