package shelfful.app;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.planning.LoadsTogether;
import shelfful.planning.ShelfBook;
import shelfful.schedule.LoadSource;
import shelfful.studio.Studio;

/** The loads of a week from the load planner, one at a time for each thread that asks. */
final class WeekLoads implements LoadSource {
  private final Inspector inspector = new Inspector();
  private final ShelfBook book;
  private final Set<PlanALoad> running = ConcurrentHashMap.newKeySet();
  private volatile Optional<BooleanSupplier> timeIsOver = Optional.empty();
  private volatile boolean stopped;
  private volatile Runnable betweenSteps = () -> {};

  /** The loads of a week of a studio. */
  WeekLoads(Studio studio) {
    this.book = new ShelfBook(studio);
  }

  /**
   * From now on a load in which everything stands is not searched for fewer layers, pieces are left
   * where the search found room for them, what loads find out about shelves is shared, and a search
   * is ended when the time is over.
   */
  void hurry(BooleanSupplier over) {
    timeIsOver = Optional.of(over);
  }

  /** What is done between two steps of a search, by the thread that makes them. */
  void betweenSteps(Runnable other) {
    betweenSteps = other;
  }

  void stop() {
    stopped = true;
    running.forEach(PlanALoad::stop);
  }

  boolean isStopped() {
    return stopped;
  }

  @Override
  public Optional<InspectedLoad> plan(LoadRequest request) {
    return plan(request, new PlanALoad(request));
  }

  @Override
  public Optional<InspectedLoad> plan(LoadRequest request, Load like) {
    return plan(request, new PlanALoad(request).startFrom(like));
  }

  @Override
  public Optional<List<InspectedLoad>> together(List<Load> loads, int effort, long seed) {
    return new LoadsTogether(book, this::isOver)
        .better(loads, effort, seed)
        .map(found -> found.stream().flatMap(load -> inspector.inspect(load).passed().stream()))
        .map(Stream::toList)
        .filter(passed -> passed.size() == loads.size());
  }

  /** Asked between any two changes of several loads. */
  private boolean isOver() {
    betweenSteps.run();
    return stopped || timeIsOver.filter(BooleanSupplier::getAsBoolean).isPresent();
  }

  private Optional<InspectedLoad> plan(LoadRequest request, PlanALoad planning) {
    if (timeIsOver.isPresent()) {
      planning.spacedTo(Double.POSITIVE_INFINITY);
      if (request.steps() > 0) {
        planning.with(book);
      }
    }
    running.add(planning);
    try {
      if (stopped) {
        planning.stop();
      }
      return planning.run(SearchLength.ofSteps(request.steps()), listener(request, planning));
    } finally {
      running.remove(planning);
    }
  }

  private PlanListener listener(LoadRequest request, PlanALoad planning) {
    return new PlanListener() {
      @Override
      public void better(InspectedLoad load) {
        if (request.steps() == 0) {
          // Without steps the first load is enough: the others come when the week has its shape.
          planning.stop();
        } else if (timeIsOver.isPresent() && load.load().leftOut().isEmpty()) {
          planning.enough();
        }
      }

      @Override
      public void betweenSteps() {
        betweenSteps.run();
        if (request.steps() > 0 && timeIsOver.filter(BooleanSupplier::getAsBoolean).isPresent()) {
          planning.enough();
        }
      }
    };
  }
}
