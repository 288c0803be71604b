package shelfful.planning;

/**
 * What proposals are made with.
 *
 * @param rebuilder makes them
 * @param slots turns them into changes of pieces
 * @param mostLevels how many levels a column may have at most
 */
record Workbench(Rebuilder rebuilder, SlotTable slots, int mostLevels) {

  boolean hasRoomFor(Sketch sketch) {
    for (int c = 0; c < sketch.columns(); c++) {
      if (sketch.levels(c) > mostLevels) {
        return false;
      }
    }
    return true;
  }
}
