package shelfful.planning;

import java.util.Arrays;

/**
 * What no change of a sketch may undo.
 *
 * @param leastLevels by column, how many of its lowest levels are counted even when empty, so that
 *     what is kept on them keeps its layer's number
 * @param kept by lot, whether its pieces never leave their shelf
 */
record Held(int[] leastLevels, boolean[] kept) {

  static Held nothing(int columns, int lots) {
    return new Held(new int[columns], new boolean[lots]);
  }

  boolean isAnything() {
    return Arrays.stream(leastLevels).sum() > 0;
  }

  boolean keepsLevel(int column, int level) {
    return level < leastLevels[column];
  }
}
