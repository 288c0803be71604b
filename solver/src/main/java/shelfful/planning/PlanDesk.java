package shelfful.planning;

import java.util.function.BooleanSupplier;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.load.Load;
import shelfful.packing.Effort;
import shelfful.packing.EvenSpacer;

/** Everything needed to plan with one column plan, and the best sketch found so far. */
final class PlanDesk {
  /** For what was refused in a hurry. */
  private static final Effort PATIENT = new Effort(3, 12);

  private final SketchJudge judge;
  private final Rebuilder rebuilder;
  private final LoadSearch search;
  private final BooleanSupplier stop;
  private final EnvironmentMode mode;
  private final long seed;
  private Sketch best;

  PlanDesk(Stand stand, ReadyWare ware, EnvironmentMode mode, long seed, BooleanSupplier stop) {
    this(stand, ware, mode, seed, stop, spaces(stand, ware));
  }

  private PlanDesk(
      Stand stand,
      ReadyWare ware,
      EnvironmentMode mode,
      long seed,
      BooleanSupplier stop,
      ShelfSpaces spaces) {
    PairGaps gaps = new PairGaps(stand.request());
    this.mode = mode;
    this.seed = seed;
    this.stop = stop;
    double[][] between = gaps.between(ware.kinds());
    ShelfAnswers answers = new ShelfAnswers(ware.kinds(), between, seed, stop);
    this.judge = new SketchJudge(stand, ware, spaces, answers);
    Appeal appeal = new Appeal(ware, between);
    this.rebuilder = new Rebuilder(judge, appeal);
    this.search = new LoadSearch(judge, rebuilder, mode, stop);
  }

  private static ShelfSpaces spaces(Stand stand, ReadyWare ware) {
    PairGaps gaps = new PairGaps(stand.request());
    return new ShelfSpaces(stand, gaps.widest(ware.kinds()), stand.cupboard().widest());
  }

  /** A second desk for the same column plan: another seed, the same spaces, all that is known. */
  PlanDesk twin(long twinSeed) {
    PlanDesk twin = new PlanDesk(judge.stand(), judge.ware(), mode, twinSeed, stop, judge.spaces());
    twin.judge.learnFrom(judge);
    twin.best = best.copy();
    return twin;
  }

  /** Tells each of two desks all settings the other has found, and the better load. */
  void meet(PlanDesk twin) {
    judge.learnFrom(twin.judge);
    twin.judge.learnFrom(judge);
    int order = merit().compareTo(twin.merit());
    if (order > 0) {
      twin.best = best.copy();
    } else if (order < 0) {
      best = twin.best.copy();
    }
  }

  void coarse() {
    best = rebuilder.coarse();
  }

  void greedy() {
    Sketch greedy = rebuilder.greedy();
    if (best == null || Merit.of(greedy, judge).compareTo(merit()) > 0) {
      best = greedy;
    }
  }

  Stand stand() {
    return judge.stand();
  }

  Merit merit() {
    return Merit.of(best, judge);
  }

  LoadSearch search() {
    return search;
  }

  void searchOn(SearchBudget budget, long round, Runnable better) {
    best =
        search.run(
            best,
            budget,
            seed * 31 + round,
            sketch -> {
              if (Merit.of(sketch, judge).compareTo(merit()) > 0) {
                best = sketch;
                better.run();
              }
            });
  }

  /** Gives what was refused in a hurry another chance. */
  void tryHarder() {
    judge.tryHarder(PATIENT);
  }

  /** The best sketch as a load, pieces where the packer left them. */
  Load asFound() {
    return new LoadComposer(judge, (space, kinds, found) -> found).compose(best);
  }

  /**
   * The best sketch as a load, pieces spread so that the smallest gap on each shelf is as large as
   * can be.
   */
  Load evenlySpaced() {
    EvenSpacer spacer = new EvenSpacer(stop);
    return new LoadComposer(
            judge,
            (space, kinds, found) ->
                found.bodies().isEmpty()
                    ? found
                    : judge.answers().spread(space, kinds, found, spacer))
        .compose(best);
  }

  PlanningWork work() {
    ShelfAnswers answers = judge.answers();
    return new PlanningWork(answers.asked(), answers.fromMemory(), answers.relaxings());
  }
}
