package shelfful.inspect;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import shelfful.kiln.Shelf;
import shelfful.measure.Cone;

/** The firing is not hotter than the kiln and every shelf used allow. */
final class HeatCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Cone cone = setting.firing().cone();
    if (setting.kiln().hottest().filter(cone::isHotterThan).isPresent()) {
      findings.add(
          Rule.KILN_TOO_HOT,
          String.format(
              Locale.ROOT,
              "The firing goes to cone %s, but the kiln %s may go to cone %s at most. Fire it cooler.",
              cone.number(),
              setting.kiln().name(),
              setting.kiln().hottest().get().number()));
    }
    Set<Shelf> used = new LinkedHashSet<>();
    setting.shelves().forEach(laid -> used.add(laid.shelf()));
    for (Shelf shelf : used) {
      if (shelf.hottest().filter(cone::isHotterThan).isPresent()) {
        findings.add(
            Rule.KILN_TOO_HOT,
            String.format(
                Locale.ROOT,
                "The firing goes to cone %s, but the shelf %s may go to cone %s at most. Use another shelf.",
                cone.number(),
                shelf.name(),
                shelf.hottest().get().number()));
      }
    }
  }
}
