package shelfful.remedy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.InspectedLoad;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Post;
import shelfful.load.LoadRequest;
import shelfful.load.RequestChange;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;

/**
 * Tries one more of each shelf the column plan takes, and one more set of each post, with every
 * piece held where it stands.
 */
final class MoreFurniture implements Attempt {
  @Override
  public RemedyKind kind() {
    return RemedyKind.MORE_FURNITURE;
  }

  @Override
  public boolean mayHelp(WaitingCase one) {
    return Reasons.isOfRoom(one);
  }

  @Override
  public Optional<Remedy> find(WaitingCase one) {
    if (one.plan()
        .around(RequestChange.studio(one.request(), withAll(one)), id -> true)
        .isEmpty()) {
      return Optional.empty();
    }
    for (Map.Entry<String, Studio> bought : bought(one).entrySet()) {
      LoadRequest wish = RequestChange.studio(one.request(), bought.getValue());
      Optional<InspectedLoad> load = one.plan().around(wish, id -> true);
      if (load.isPresent()) {
        return Optional.of(remedy(one, bought.getKey(), load.get()));
      }
    }
    return Optional.empty();
  }

  /** Where one more of everything does not help, one more of one thing need not be tried. */
  private static Studio withAll(WaitingCase one) {
    Studio studio = one.request().studio();
    for (String shelf : columns(one).shelfIds()) {
      studio = StudioChange.moreShelves(studio, shelf, 1);
    }
    for (Post post : one.request().studio().posts()) {
      studio = StudioChange.morePosts(studio, post.id(), columns(one).postsAtOneLevel());
    }
    return studio;
  }

  private static Map<String, Studio> bought(WaitingCase one) {
    Studio studio = one.request().studio();
    Map<String, Studio> bought = new LinkedHashMap<>();
    for (String shelf : columns(one).shelfIds()) {
      studio
          .shelf(shelf)
          .ifPresent(
              kind ->
                  bought.put(
                      "one more " + kind.name(), StudioChange.moreShelves(studio, shelf, 1)));
    }
    int set = columns(one).postsAtOneLevel();
    for (Post post : studio.posts()) {
      bought.put(set + " more posts " + post.id(), StudioChange.morePosts(studio, post.id(), set));
    }
    return bought;
  }

  private static ColumnPlan columns(WaitingCase one) {
    return one.request().kiln().columnPlans().stream()
        .filter(plan -> plan.id().equals(one.load().columnPlanId()))
        .findFirst()
        .orElseThrow();
  }

  private static Remedy remedy(WaitingCase one, String bought, InspectedLoad load) {
    Telling telling = new Telling(one, load);
    String furniture = telling.furniture();
    String sentence =
        telling.goIn()
            + " on "
            + telling.where()
            + " with "
            + bought
            + " in the cupboard"
            + (furniture.isEmpty() ? ";" : " (" + furniture + ");")
            + " nothing moves on its shelf.";
    return new Remedy(
        RemedyKind.MORE_FURNITURE,
        one.gained(load.load()),
        sentence,
        load,
        telling.change(),
        Optional.empty());
  }
}
