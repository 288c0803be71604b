package shelfful.planning;

/** What proposals are made with. */
final class Workbench {
  private final Rebuilder rebuilder;
  private final SlotTable slots;
  private final int mostLevels;
  private SearchBudget budget = SearchBudget.ofSteps(1);
  private Runnable atTheEnd = () -> {};

  /**
   * @param rebuilder makes proposals
   * @param slots turns them into changes of pieces
   * @param mostLevels how many levels a column may have at most
   */
  Workbench(Rebuilder rebuilder, SlotTable slots, int mostLevels) {
    this.rebuilder = rebuilder;
    this.slots = slots;
    this.mostLevels = mostLevels;
  }

  Rebuilder rebuilder() {
    return rebuilder;
  }

  SlotTable slots() {
    return slots;
  }

  /** From now on makes proposals until a budget is spent, and then says so. */
  void until(SearchBudget next, Runnable spent) {
    budget = next;
    rebuilder.inTime(!next.isInSteps());
    atTheEnd = spent;
  }

  boolean isTimeUp() {
    boolean over = !budget.isInSteps() && budget.isSpent();
    if (over) {
      atTheEnd.run();
    }
    return over;
  }

  boolean hasRoomFor(Sketch sketch) {
    for (int c = 0; c < sketch.columns(); c++) {
      if (sketch.levels(c) > mostLevels) {
        return false;
      }
    }
    return true;
  }
}
