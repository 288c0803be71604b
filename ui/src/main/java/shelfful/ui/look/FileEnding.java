package shelfful.ui.look;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The endings of a kind of file. The system's own window asks before the file of a name that was
 * typed is replaced; when an ending is added to the name, that is another file, and it is asked
 * here.
 *
 * @param endings with their dots, such as {@code .work.json}; the first is added to a name that
 *     ends like none of them; at least one
 * @param mayReplace asked of a file that is there already
 */
public record FileEnding(List<String> endings, Predicate<Path> mayReplace) {

  /**
   * The file that is meant.
   *
   * @param typed as it was chosen
   * @return the same with an ending; empty when a file that is there already is to stay
   */
  public Optional<Path> complete(Path typed) {
    String name = String.valueOf(typed.getFileName()).toLowerCase(Locale.ROOT);
    if (endings.stream().map(FileEnding::last).anyMatch(name::endsWith)) {
      return Optional.of(typed);
    }
    Path whole = typed.resolveSibling(typed.getFileName() + endings.get(0));
    return Files.notExists(whole) || mayReplace.test(whole) ? Optional.of(whole) : Optional.empty();
  }

  /** {@code .json} of {@code .work.json}: a plan may be given a name of one's own. */
  private static String last(String ending) {
    return ending.substring(ending.lastIndexOf('.'));
  }
}
