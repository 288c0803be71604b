package shelfful.drawing;

import java.util.List;

/** What every set of sheets says about danger; docs/cautions.md gives the same with sources. */
final class Cautions {
  static final String TITLE = "Before you touch the kiln";

  static final List<String> LINES =
      List.of(
          "Cut the kiln off from its supply, at the isolator, before a hand, shelf or tool goes in. Some shelves"
              + " conduct.",
          "Open it only when its maker's manual says it is cool enough. Jacket, bricks and ware hold heat for"
              + " hours.",
          "Shelves and full layers are heavy: take two people or half shelves, and do not lean on the bricks.",
          "Kiln wash and dust hold silica. Wipe wet or vacuum through a HEPA filter, never sweep; wear a fitted"
              + " respirator.",
          "Drips and edges of glaze are glass. Wear gloves and goggles to unpack, chip or grind.",
          "At a peephole wear eye protection of the shade rated for kilns. Sunglasses are not enough.",
          "Vent to the outside while firing: carbon monoxide and sulphur oxides come off bisque, metals off"
              + " glaze.",
          "Keep what burns well away, and no firing alone without a shut-off that works by itself.",
          "Wiring is for licensed people. The kiln maker's manual and local electrical, fire and building codes"
              + " come before this sheet.");

  private Cautions() {}
}
