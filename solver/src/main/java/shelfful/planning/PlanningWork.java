package shelfful.planning;

/**
 * What planning has done so far, counted so that it can be compared between machines.
 *
 * @param asked shelf questions put to the packer
 * @param fromMemory shelf questions answered from memory
 * @param relaxings settings the packer relaxed for its answers
 */
public record PlanningWork(long asked, long fromMemory, long relaxings) {
  static final PlanningWork NONE = new PlanningWork(0, 0, 0);

  PlanningWork plus(PlanningWork more) {
    return new PlanningWork(
        asked + more.asked, fromMemory + more.fromMemory, relaxings + more.relaxings);
  }
}
