package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.geometry.Pose;
import shelfful.packing.Effort;
import shelfful.studio.Studio;
import shelfful.ware.FiringKind;
import shelfful.ware.StandingWare;

/**
 * What earlier loads of a studio were found to hold shelf by shelf, with the settings, and what no
 * setting was found for: so that the loads that follow begin with all that is known. A space is
 * found again by what it is like, so by the same kind of shelf in a kiln of the same floor plan
 * under the same posts; ware by its form, its tolerance and the gap its glaze asks for. All else
 * that a setting depends on are the rules of the studio, so a book is of one studio.
 *
 * <p>A load planned with a book depends on what stands in it, so it is no function of its request
 * alone. May be used by several threads.
 */
public final class ShelfBook {
  /** So many contents are kept for a space, the latest. */
  private static final int MOST_CONTENTS = 600;

  /** So many contents that no setting was found for are kept for a space, the latest. */
  private static final int MOST_REFUSED = 4000;

  private final Studio studio;
  private final Map<Ware, Integer> numbers = new HashMap<>();
  private final Map<Place, Page> pages = new HashMap<>();

  /** An empty book. */
  public ShelfBook(Studio studio) {
    this.studio = studio;
  }

  /**
   * What is the same to every shelf of a studio.
   *
   * @param standing as it stands in the firing
   * @param tolerance in millimetres
   * @param gapGlaze where its glaze asks for a gap or a distance
   */
  record Ware(StandingWare standing, double tolerance, Optional<String> gapGlaze) {}

  /** A space, by what it is like, in a firing of a kind. */
  record Place(FiringKind firing, String space) {}

  /** A body by the number of its ware, where it stands in the frame of the shelf. */
  record Body(int ware, Pose pose) {}

  /**
   * What fits in a space.
   *
   * @param counts by number of ware
   * @param spare as {@link shelfful.packing.Packed#spare()}
   */
  record Content(Map<Integer, Integer> counts, List<Body> bodies, double spare) {
    Content {
      counts = Map.copyOf(counts);
      bodies = List.copyOf(bodies);
    }

    boolean holds(Content other) {
      return other.counts.entrySet().stream()
          .allMatch(one -> counts.getOrDefault(one.getKey(), 0) >= one.getValue());
    }
  }

  /** What is known of a space. */
  private static final class Page {
    private final List<Content> contents = new ArrayList<>();
    private final Map<Effort, Set<Map<Integer, Integer>>> refused = new HashMap<>();
  }

  boolean isOf(Studio other) {
    return studio.equals(other);
  }

  /** The number of some ware in this book. */
  synchronized int number(Ware ware) {
    return numbers.computeIfAbsent(ware, any -> numbers.size());
  }

  /** What is known to fit. */
  synchronized List<Content> contents(Place place) {
    return List.copyOf(page(place).contents);
  }

  /** What no setting was found for with an effort, by number of ware. */
  synchronized List<Map<Integer, Integer>> refused(Place place, Effort effort) {
    return List.copyOf(page(place).refused.getOrDefault(effort, Set.of()));
  }

  /** Writes down what fits; what is part of other contents is left out. */
  synchronized void fits(Place place, List<Content> found) {
    List<Content> known = page(place).contents;
    for (Content content : found) {
      if (known.stream().noneMatch(other -> other.holds(content))) {
        known.removeIf(content::holds);
        known.add(content);
      }
    }
    if (known.size() > MOST_CONTENTS) {
      known.subList(0, known.size() - MOST_CONTENTS).clear();
    }
  }

  /** Writes down what no setting was found for with an effort. */
  synchronized void refuse(Place place, Effort effort, List<Map<Integer, Integer>> found) {
    Set<Map<Integer, Integer>> known =
        page(place).refused.computeIfAbsent(effort, any -> new LinkedHashSet<>());
    known.addAll(found);
    var oldest = known.iterator();
    for (int over = known.size() - MOST_REFUSED; over > 0; over--) {
      oldest.next();
      oldest.remove();
    }
  }

  private Page page(Place place) {
    return pages.computeIfAbsent(place, any -> new Page());
  }
}
