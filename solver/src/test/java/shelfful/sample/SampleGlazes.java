package shelfful.sample;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.Zone;

/** Five glazes for cone 6, four of them with a wish of their own. */
final class SampleGlazes {
  static final Cone CONE = new Cone("6");

  /** Each with its share of the list in 20: most ware is in the plain one. */
  static final List<String> SHARES =
      List.of(
          "clear", "clear", "clear", "clear", "clear", "clear", "clear", "clear", "clear", "clear",
          "clear", "clear", "white", "white", "white", "iron", "iron", "lake", "lake", "night");

  private SampleGlazes() {}

  /** What a glaze asks of a setting. */
  private record Wish(Optional<Length> gap, boolean runny, Set<Zone> likes, Set<Zone> forbidden) {
    static final Wish NONE = new Wish(Optional.empty(), false, Set.of(), Set.of());

    static Wish gap(double millimetres) {
      return new Wish(Optional.of(Length.ofMillimetres(millimetres)), false, Set.of(), Set.of());
    }

    static Wish zones(Set<Zone> likes, Set<Zone> forbidden) {
      return new Wish(Optional.empty(), false, likes, forbidden);
    }
  }

  static List<Glaze> all() {
    return List.of(
        glaze("clear", "A", Wish.NONE),
        glaze("white", "B", Wish.zones(Set.of(Zone.MIDDLE), Set.of())),
        glaze("iron", "C", Wish.gap(10)),
        glaze("lake", "D", new Wish(Optional.empty(), true, Set.of(), Set.of())),
        glaze("night", "E", Wish.zones(Set.of(Zone.BOTTOM), Set.of(Zone.TOP))));
  }

  /** White takes colour from iron on the same layer. */
  static List<KeptApart> apart() {
    return List.of(
        new KeptApart("white", "iron", KeptApart.Apartness.NOT_ON_ONE_LAYER, Optional.empty()));
  }

  private static Glaze glaze(String id, String letter, Wish wish) {
    return new Glaze(
        id,
        id,
        letter,
        "#c0b8a8",
        CONE,
        Optional.empty(),
        wish.gap(),
        wish.runny(),
        Length.ofMillimetres(4),
        wish.likes(),
        wish.forbidden());
  }
}
