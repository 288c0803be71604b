package shelfful.drawing;

import java.util.Locale;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/** What is fired, in a line. */
final class FiringWords {
  private FiringWords() {}

  /** Kiln, kind, cone and air, and the day where one is given (ISO 8601). */
  static String of(Setting setting) {
    String day = setting.load().request().day().map(one -> ", " + one).orElse("");
    return setting.kiln().name() + ": " + firing(setting.firing()) + day;
  }

  static String firing(Firing firing) {
    return firing.kind().name().toLowerCase(Locale.ROOT)
        + " firing to cone "
        + firing.cone().number()
        + ", "
        + firing.atmosphere().name().toLowerCase(Locale.ROOT);
  }

  static String counts(Setting setting) {
    Load load = setting.load();
    int waiting = load.leftOut().size();
    String waits = waiting == 0 ? "none waits" : waiting == 1 ? "1 waits" : waiting + " wait";
    return load.placed() + " of " + (load.placed() + waiting) + " in, " + waits;
  }

  /** How the plan was made: column plan, seed and length of the search. */
  static String madeBy(Setting setting) {
    LoadRequest request = setting.load().request();
    String steps = request.steps() == 0 ? "ended by hand or time" : request.steps() + " steps";
    String search = ".  Search: seed " + request.seed() + ", " + steps + ".";
    return "Columns: " + setting.plan().name() + search;
  }
}
