package shelfful.app;

import java.util.Optional;
import shelfful.inspect.InspectedLoad;

/** One run that looks for better and better loads. {@link #stop()} may be called by any thread. */
public interface Planning {

  /**
   * Plans until the length is over or somebody stops it.
   *
   * @return the best load, or empty when there was none that the judge passed
   */
  Optional<InspectedLoad> run(SearchLength length, PlanListener listener);

  /** Ends planning within a second; the best load so far is kept. */
  void stop();
}
