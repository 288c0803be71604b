package shelfful.purchase;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.studio.Studio;
import shelfful.studio.StudioChange;

/**
 * Something that could be bought.
 *
 * @param words what it is, for people
 * @param studio the studio with it in the cupboard
 */
public record Purchase(String words, Studio studio) {

  /**
   * One more of each shelf that a kiln takes, and one more set of each post: as many as the kiln's
   * column plans stand under one level.
   */
  public static List<Purchase> usual(Studio studio, String kilnId) {
    List<ColumnPlan> plans = studio.kiln(kilnId).map(kiln -> kiln.columnPlans()).orElse(List.of());
    List<Purchase> all = new ArrayList<>();
    for (Shelf shelf : shelves(studio, plans)) {
      all.add(
          new Purchase(
              "one more " + shelf.name(), StudioChange.moreShelves(studio, shelf.id(), 1)));
    }
    int set = plans.stream().mapToInt(ColumnPlan::postsAtOneLevel).min().orElse(3);
    for (Post post : studio.posts()) {
      String length = LengthText.write(post.length(), studio.unit());
      all.add(
          new Purchase(
              set + " more posts of " + length + " (" + post.id() + ")",
              StudioChange.morePosts(studio, post.id(), set)));
    }
    return List.copyOf(all);
  }

  /**
   * All shelves of each kind that a kiln takes, thinner; those that are no thicker are left out.
   */
  public static List<Purchase> thinner(Studio studio, String kilnId, Length thickness) {
    List<ColumnPlan> plans = studio.kiln(kilnId).map(kiln -> kiln.columnPlans()).orElse(List.of());
    String length = LengthText.write(thickness, studio.unit());
    return shelves(studio, plans).stream()
        .filter(shelf -> shelf.thickness().isLongerThan(thickness))
        .map(
            shelf ->
                new Purchase(
                    shelf.name() + " of " + length + " in place of the thicker ones",
                    StudioChange.shelfThickness(studio, shelf.id(), thickness)))
        .toList();
  }

  private static List<Shelf> shelves(Studio studio, List<ColumnPlan> plans) {
    return plans.stream()
        .flatMap(plan -> plan.shelfIds().stream())
        .distinct()
        .flatMap(id -> studio.shelf(id).stream())
        .toList();
  }
}
