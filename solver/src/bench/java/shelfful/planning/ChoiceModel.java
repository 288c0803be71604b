package shelfful.planning;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/** The integer program of {@link ExactChoice} for one pool. Heights in micrometres. */
final class ChoiceModel {
  private final CpModel model = new CpModel();
  private final LevelPool pool;
  private final ReadyWare ware;
  private final List<ColumnModel> columns = new ArrayList<>();
  private final List<IntVar> placed = new ArrayList<>();

  ChoiceModel(LevelPool pool) {
    this.pool = pool;
    this.ware = pool.judge().ware();
    Stand stand = pool.judge().stand();
    PostModel posts = new PostModel(model, stand.cupboard());
    for (int c = 0; c < stand.columns(); c++) {
      columns.add(new ColumnModel(model, pool, c, posts));
    }
    for (int c = 0; c < stand.columns(); c++) {
      columns.get(c).stand(columns);
    }
    posts.withinStock();
    shelvesInStock(stand);
    lots();
    model.maximize(merit());
  }

  CpModel program() {
    return model;
  }

  /** A shelf of any kind that may lie in a place counts against all kinds that may lie there. */
  private void shelvesInStock(Stand stand) {
    List<List<String>> kindsOf =
        stand.spots().stream()
            .map(spot -> spot.shelves().stream().map(shelf -> shelf.id()).sorted().toList())
            .toList();
    for (List<String> kinds : kindsOf.stream().distinct().toList()) {
      LinearExprBuilder used = LinearExpr.newBuilder();
      for (Spot spot : stand.spots()) {
        if (kindsOf.get(spot.index()).equals(kinds)) {
          columns.get(spot.column()).levels().forEach(used::add);
        }
      }
      int there =
          stand.request().studio().shelves().stream()
              .filter(shelf -> kinds.contains(shelf.id()))
              .mapToInt(shelf -> shelf.count())
              .sum();
      model.addLessOrEqual(used, there);
    }
  }

  private void lots() {
    for (Lot lot : ware.lots()) {
      IntVar in = model.newIntVar(0, lot.size(), "lot " + lot.index());
      LinearExprBuilder held = LinearExpr.newBuilder();
      columns.forEach(column -> column.addHeld(lot.index(), held));
      model.addLessOrEqual(in, held);
      placed.add(in);
    }
    for (Lot lot : ware.lots()) {
      for (Lot other : ware.lots()) {
        if (other.index() < lot.index()) {
          if (other.bundle() == lot.bundle()) {
            model.addEquality(placed.get(lot.index()), placed.get(other.index()));
          }
          if (pool.judge().apart().inFiring(lot.index(), other.index())) {
            notBoth(placed.get(lot.index()), placed.get(other.index()));
          }
        }
      }
    }
  }

  private void notBoth(IntVar one, IntVar other) {
    BoolVar first = model.newBoolVar("first");
    model.addEquality(other, 0).onlyEnforceIf(first);
    model.addEquality(one, 0).onlyEnforceIf(first.not());
  }

  /** Must-go pieces outweigh everything else; fewer layers decide between equals. */
  private LinearExprBuilder merit() {
    long all = ware.lots().stream().mapToLong(lot -> lot.size() * lot.worth()).sum() + 1;
    LinearExprBuilder merit = LinearExpr.newBuilder();
    long layers = 1 + columns.stream().mapToLong(ColumnModel::mostLevels).sum();
    for (Lot lot : ware.lots()) {
      long each = lot.worth() + (lot.mustGo() ? all : 0);
      merit.addTerm(placed.get(lot.index()), each * layers);
    }
    columns.forEach(column -> column.levels().forEach(level -> merit.addTerm(level, -1)));
    return merit;
  }

  /** What a solved program chose. */
  LevelChoice choice(CpSolver solver) {
    List<PooledLevel> chosen = new ArrayList<>();
    columns.forEach(column -> column.addChosen(solver, chosen));
    int[] in = placed.stream().mapToInt(lot -> (int) solver.value(lot)).toArray();
    return new LevelChoice(pool, chosen, in);
  }

  /** Never again all the levels of a solution, nor those and more. */
  void forbid(CpSolver solver) {
    List<IntVar> used = new ArrayList<>();
    long count = 0;
    for (ColumnModel column : columns) {
      for (IntVar level : column.levels()) {
        if (solver.value(level) > 0) {
          used.add(level);
          count += solver.value(level);
        }
      }
    }
    model.addLessThan(LinearExpr.sum(used.toArray(IntVar[]::new)), count);
  }
}
