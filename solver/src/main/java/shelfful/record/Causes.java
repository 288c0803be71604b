package shelfful.record;

import java.util.List;

/**
 * What can be wrong with a piece. The list is a suggestion in plain words of the trade; a potter
 * may keep another one, and any short text can be a cause.
 */
public final class Causes {
  /** Used where no list of the potter's own is there. */
  public static final List<String> USUAL =
      List.of(
          "crawled",
          "ran onto the shelf",
          "pinholes",
          "blistered",
          "crazed",
          "shivered",
          "cracked",
          "warped",
          "bloated",
          "stuck to its neighbour",
          "stuck to the shelf",
          "crumb in the glaze",
          "marked by another glaze",
          "colour off",
          "under-fired",
          "over-fired",
          "chipped",
          "broken in handling");

  private Causes() {}
}
