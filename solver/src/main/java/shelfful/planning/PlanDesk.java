package shelfful.planning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.config.solver.EnvironmentMode;
import shelfful.load.KeptProblem;
import shelfful.load.KeptProblem.Code;
import shelfful.load.Load;
import shelfful.packing.Effort;
import shelfful.packing.EvenSpacer;
import shelfful.packing.Packed;
import shelfful.ware.Piece;

/** Everything needed to plan with one column plan, and the best sketch found so far. */
final class PlanDesk {
  /** For what was refused in a hurry. */
  private static final Effort PATIENT = new Effort(3, 12);

  private final SketchJudge judge;
  private final Rebuilder rebuilder;
  private final double[][] between;
  private final LoadSearch search;
  private final BooleanSupplier stop;
  private final EnvironmentMode mode;
  private final long seed;
  private Sketch best;
  private Optional<Load> earlier = Optional.empty();
  private Set<Packed> settled = Set.of();

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
    this.between = gaps.between(ware.kinds());
    ShelfAnswers answers = new ShelfAnswers(ware, between, seed, stop);
    this.judge = new SketchJudge(stand, ware, spaces, answers);
    Appeal appeal = new Appeal(ware, between);
    this.rebuilder = new Rebuilder(judge, appeal);
    this.search = new LoadSearch(judge, rebuilder, mode, stop);
  }

  private static ShelfSpaces spaces(Stand stand, ReadyWare ware) {
    PairGaps gaps = new PairGaps(stand.request());
    return new ShelfSpaces(stand, gaps.widest(ware.kinds()), stand.cupboard().widest());
  }

  /** Begins with what is known of shelves in a book. */
  void with(ShelfBook shelves) {
    if (judge.staying().isNothing() && !judge.ware().shares().isAnything()) {
      judge.with(new BookedShelves(shelves, judge.stand().request().firing().kind(), judge.ware()));
    }
  }

  /** Whether its load was made of an earlier one. */
  boolean goesOn() {
    return earlier.isPresent();
  }

  /** Writes what was found to fit, and what not, into the book it was begun with. */
  void writeDown() {
    judge.writeDown();
  }

  /** A second desk for the same column plan: another seed, the same spaces, all that is known. */
  PlanDesk twin(long twinSeed) {
    if (!judge.staying().isNothing()) {
      PlanDesk alone = new PlanDesk(judge.stand(), judge.ware(), mode, twinSeed, stop);
      alone.adopt(this);
      return alone;
    }
    PlanDesk twin = new PlanDesk(judge.stand(), judge.ware(), mode, twinSeed, stop, judge.spaces());
    twin.judge.learnFrom(judge);
    twin.best = best.copy();
    twin.earlier = earlier;
    twin.settled = settled;
    return twin;
  }

  /** Tells each of two desks all settings the other has found, and the better load. */
  void meet(PlanDesk twin) {
    if (judge.staying().isNothing()) {
      judge.learnFrom(twin.judge);
      twin.judge.learnFrom(judge);
    }
    int order = merit().compareTo(twin.merit());
    if (order > 0) {
      twin.adopt(this);
    } else if (order < 0) {
      adopt(twin);
    }
  }

  /** Why what must stay cannot stay here. */
  List<KeptProblem> keptProblems() {
    List<KeptProblem> problems = KeptGround.problems(judge, between);
    Sketch first = problems.isEmpty() ? rebuilder.greedy() : null;
    if (first == null || judge.judge(first.copy()).broken() == 0) {
      return problems;
    }
    List<String> mates =
        judge.ware().lots().stream()
            .filter(lot -> lot.hold() == Hold.MATE)
            .flatMap(lot -> lot.pieces().stream())
            .map(Piece::id)
            .toList();
    return List.of(
        new KeptProblem(
            Code.SET_FINDS_NO_ROOM,
            mates,
            "No room was found for "
                + String.join(", ", mates)
                + ", which must go in with what is kept of their sets.",
            "Keep them too, or release the rest of their sets."));
  }

  void coarse() {
    best = rebuilder.coarse();
    if (!judge.staying().isNothing() && merit().broken() > 0) {
      best = rebuilder.greedy();
    }
  }

  /** Begins from what can be taken over of an earlier load of this column plan. */
  void begin(Load load) {
    Optional<Load> here = judge.stand().takenOver(load);
    if (here.isEmpty()) {
      return;
    }
    EarlierLoad taken = new EarlierLoad(judge, here.get());
    Sketch sketch = rebuilder.goOn(taken.sketch());
    if (sketch != null) {
      best = sketch;
      earlier = here;
      settled = taken.settings();
    }
  }

  /** Takes a load over just as it is; false where something of it would not stand here. */
  boolean takesOver(Load load) {
    Optional<Load> here = judge.stand().takenOver(load);
    if (here.isEmpty() || judge.ware().shares().isAnything()) {
      return false;
    }
    best = new EarlierLoad(judge, here.get()).sketch();
    return Arrays.stream(best.placed()).sum() == load.standing().size()
        && judge.judge(best.copy()).broken() == 0;
  }

  SketchJudge judge() {
    return judge;
  }

  Sketch best() {
    return best;
  }

  /** Goes on from a sketch that was bettered elsewhere. */
  void goOnFrom(Sketch sketch) {
    best = sketch;
  }

  boolean hasBegun() {
    return best != null;
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

  /**
   * Takes over another desk's best sketch of the same column plan, with the settings it rests on.
   */
  void adopt(PlanDesk other) {
    judge.learn(other.best, other.judge);
    best = other.best.copy();
    earlier = other.earlier;
    settled = other.settled;
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

  /** Whether searching from other loads is of use to the one at hand. */
  boolean mayStartAnew() {
    return earlier.isEmpty() && rebuilder.makesUseOfLayersMet();
  }

  /**
   * Searches from a load made anew, with chance in what it is built of. The better of what comes of
   * it and the load at hand is kept; what was found out about shelves is in any case.
   */
  void startAnew(SearchBudget budget, long round, Runnable better) {
    Sketch kept = best;
    best = rebuilder.greedy(new Random(seed * 31 + round));
    searchOn(budget, round, better);
    if (Merit.of(kept, judge).compareTo(merit()) > 0) {
      best = kept;
    }
  }

  /** Gives what was refused in a hurry another chance. */
  void tryHarder() {
    judge.tryHarder(PATIENT);
  }

  /** The best sketch as a load, pieces where the packer left them. */
  Load asFound() {
    return new LoadComposer(judge, (space, kinds, found) -> found, earlier).compose(best);
  }

  /**
   * The best sketch as a load, pieces spread so that the smallest gap on each shelf is as large as
   * can be; shelves taken over from an earlier load are left as they are.
   *
   * @param precision in millimetres, of that gap; 0 to go on as long as it grows
   */
  Load evenlySpaced(double precision) {
    EvenSpacer spacer = new EvenSpacer(stop, precision);
    return new LoadComposer(
            judge,
            (space, kinds, found) ->
                found.bodies().isEmpty() || settled.contains(found)
                    ? found
                    : judge.answers().spread(space, kinds, found, spacer),
            earlier)
        .compose(best);
  }

  /** A load that stands here as it is, evenly spaced; empty where something would not stand. */
  Optional<Load> spaced(Load load, double precision) {
    begin(load);
    if (best == null) {
      return Optional.empty();
    }
    settled = Set.of();
    return Optional.of(evenlySpaced(precision))
        .filter(found -> found.standing().equals(load.standing()));
  }

  PlanningWork work() {
    ShelfAnswers answers = judge.answers();
    return new PlanningWork(answers.asked(), answers.fromMemory(), answers.relaxings());
  }
}
