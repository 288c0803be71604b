package shelfful.sample;

import shelfful.load.LoadRequest;

/**
 * One load to plan.
 *
 * @param name in kebab case, unique
 * @param shows what it is there for, in a few words
 * @param asked with seed 1; use {@link #request(long)} for others
 */
public record SampleLoad(String name, String shows, LoadRequest asked) {

  /** The same question with another seed of the search. */
  public LoadRequest request(long seed) {
    return new LoadRequest(
        asked.studio(),
        asked.batches(),
        asked.firing(),
        asked.columnPlanId(),
        asked.day(),
        seed,
        asked.steps());
  }

  /** The name, which is how tests call it. */
  @Override
  public String toString() {
    return name;
  }
}
