package shelfful.planning;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/**
 * One column of the integer program: its levels, each under posts of some length or on top, and
 * what it stands on.
 */
final class ColumnModel {
  private final CpModel model;
  private final Stand stand;
  private final int column;
  private final PostModel posts;
  private final List<PooledLevel> offered = new ArrayList<>();
  private final List<IntVar> used = new ArrayList<>();
  private final List<BoolVar> onTop = new ArrayList<>();
  private final BoolVar built;
  private final int most;

  /** From what the column stands on to its highest piece, or to the top of its last posts. */
  private final LinearExprBuilder height = LinearExpr.newBuilder();

  /** The same from the floor. */
  private final LinearExprBuilder top = LinearExpr.newBuilder();

  /** By post length: how many levels, or floors, they stand on. */
  private final List<LinearExprBuilder> under = new ArrayList<>();

  ColumnModel(CpModel model, LevelPool pool, int column, PostModel posts) {
    this.model = model;
    this.stand = pool.judge().stand();
    this.column = column;
    this.posts = posts;
    this.built = model.newBoolVar("column " + column);
    long least = Math.max(10_000, stand.headroom() + thickness());
    this.most = (int) (stand.chamberHeight() / least);
    posts.lengths().forEach(length -> under.add(LinearExpr.newBuilder()));
    pool.levels().stream().filter(level -> level.column() == column).forEach(this::offer);
    LinearExpr levels = LinearExpr.sum(used.toArray(IntVar[]::new));
    model.addLessOrEqual(levels, most);
    model.addGreaterOrEqual(levels, 1).onlyEnforceIf(built);
    model.addEquality(levels, 0).onlyEnforceIf(built.not());
  }

  private long thickness() {
    return stand.spotsOf(column).get(0).shelves().get(0).thickness().micrometres();
  }

  private void offer(PooledLevel level) {
    IntVar times = model.newIntVar(0, most, "level");
    BoolVar last = model.newBoolVar("on top");
    LinearExprBuilder where = LinearExpr.newBuilder();
    where.add(last);
    long least = Math.max(level.tallest() + stand.headroom(), stand.leastLayer());
    for (int k = 0; k < posts.lengths().size(); k++) {
      PostLength length = posts.lengths().get(k);
      if (level.mayCarry() && length.height() >= least && length.height() < stand.ceiling()) {
        IntVar here = model.newIntVar(0, most, "under posts");
        where.add(here);
        height.addTerm(here, length.height());
        under.get(k).add(here);
      }
    }
    model.addEquality(times, where);
    height.addTerm(times, thickness());
    height.addTerm(last, level.tallest());
    offered.add(level);
    used.add(times);
    onTop.add(last);
  }

  /**
   * Sets the column on the floor or on those it stands on; to be called once for each, lower
   * columns first.
   */
  void stand(List<ColumnModel> all) {
    // The last level has posts on it exactly when another column stands on them.
    BoolVar carries = model.newBoolVar("carries");
    LinearExprBuilder above = LinearExpr.newBuilder();
    for (int up : stand.above(column)) {
      model.addImplication(all.get(up).built, carries);
      above.add(all.get(up).built);
    }
    model.addLessOrEqual(carries, above);
    LinearExprBuilder ends = LinearExpr.newBuilder();
    onTop.forEach(ends::add);
    model.addEquality(ends.add(carries), built);
    List<Integer> below = stand.below(column);
    if (below.isEmpty()) {
      raiseOffFloor();
    }
    for (int low : below) {
      ColumnModel lower = all.get(low);
      model.addImplication(built, lower.built);
      model.addEquality(lower.top, all.get(below.get(0)).top).onlyEnforceIf(built);
    }
    top.add(height);
    below.stream().limit(1).forEach(low -> top.add(all.get(low).top));
    model.addLessOrEqual(top, stand.ceiling());
    for (int k = 0; k < under.size(); k++) {
      LinearExprBuilder count = LinearExpr.newBuilder();
      count.addTerm(under.get(k), stand.column(column).posts().size());
      posts.stand(posts.lengths().get(k), count);
    }
  }

  private void raiseOffFloor() {
    LinearExprBuilder raised = LinearExpr.newBuilder();
    for (int k = 0; k < under.size(); k++) {
      PostLength length = posts.lengths().get(k);
      if (length.height() >= stand.offFloor() && length.height() < stand.ceiling()) {
        BoolVar here = model.newBoolVar("off the floor");
        raised.add(here);
        under.get(k).add(here);
        height.addTerm(here, length.height());
      }
    }
    model.addEquality(raised, built);
  }

  /** How often each offered level is used. */
  List<IntVar> levels() {
    return List.copyOf(used);
  }

  int mostLevels() {
    return most;
  }

  /** Adds how many of a lot the levels in use hold. */
  void addHeld(int lot, LinearExprBuilder held) {
    for (int i = 0; i < offered.size(); i++) {
      held.addTerm(used.get(i), offered.get(i).count(lot));
    }
  }

  /** Adds the levels that a solved program uses, that on top last. */
  void addChosen(CpSolver solver, List<PooledLevel> chosen) {
    List<PooledLevel> last = new ArrayList<>();
    for (int i = 0; i < offered.size(); i++) {
      long times = solver.value(used.get(i));
      if (solver.booleanValue(onTop.get(i))) {
        last.add(offered.get(i));
        times--;
      }
      for (; times > 0; times--) {
        chosen.add(offered.get(i));
      }
    }
    chosen.addAll(last);
  }
}
