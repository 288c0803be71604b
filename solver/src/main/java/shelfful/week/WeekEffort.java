package shelfful.week;

/**
 * How hard to look for a week. The same request with the same effort gives the same week.
 *
 * @param seed of the search
 * @param rounds how often the whole week is looked at again after the first plan, 0 to 10000
 * @param loadSteps how many steps each load is searched, 0 to 100000
 */
public record WeekEffort(long seed, int rounds, int loadSteps) {
  /** Refuses effort out of range. */
  public WeekEffort {
    if (rounds < 0 || rounds > 10_000 || loadSteps < 0 || loadSteps > 100_000) {
      throw new IllegalArgumentException(
          "Rounds are from 0 to 10000 and steps from 0 to 100000, not "
              + rounds
              + " and "
              + loadSteps);
    }
  }
}
