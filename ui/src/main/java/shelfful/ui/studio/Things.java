package shelfful.ui.studio;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import shelfful.studio.Studio;

/**
 * One of a studio's lists of things.
 *
 * @param all the list
 * @param with a studio with another list
 * @param id of a thing
 * @param renamed a thing with another id and name
 * @param fresh a thing to begin with; empty where there is none without a like one to copy
 */
record Things<T>(
    Function<Studio, List<T>> all,
    BiFunction<Studio, List<T>, Studio> with,
    Function<T, String> id,
    BiFunction<T, String, T> renamed,
    Function<Studio, Optional<T>> fresh) {

  int count(Studio studio) {
    return all.apply(studio).size();
  }

  /** A studio with a fresh thing at the end, or the same where there is none to begin with. */
  Studio added(Studio studio) {
    return fresh.apply(studio).map(thing -> with(studio, thing)).orElse(studio);
  }

  /** A studio with a copy of a thing at the end. */
  Studio copied(Studio studio, int index) {
    return with(studio, all.apply(studio).get(index));
  }

  private Studio with(Studio studio, T thing) {
    T named = renamed.apply(thing, free(studio, id.apply(thing)));
    return with.apply(studio, Place.and(all.apply(studio), named));
  }

  Studio without(Studio studio, int index) {
    return with.apply(studio, Place.without(all.apply(studio), index));
  }

  /** The id, or the id with the first number behind it that makes it a new one. */
  private String free(Studio studio, String wanted) {
    Set<String> taken =
        all.apply(studio).stream()
            .map(thing -> id.apply(thing).toLowerCase(Locale.ROOT))
            .collect(Collectors.toSet());
    String stem = wanted.replaceFirst("-[0-9]+$", "");
    String free = wanted;
    for (int number = 2; taken.contains(free.toLowerCase(Locale.ROOT)); number++) {
      free = stem + "-" + number;
    }
    return free;
  }
}
