package shelfful.planning;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/** The posts of the integer program: what standing posts are made of, and what there is. */
final class PostModel {
  private final CpModel model;
  private final PostCupboard cupboard;
  private final int[] stock;
  private final List<LinearExprBuilder> used = new ArrayList<>();

  PostModel(CpModel model, PostCupboard cupboard) {
    this.model = model;
    this.cupboard = cupboard;
    this.stock = cupboard.stock();
    for (int kind = 0; kind < stock.length; kind++) {
      used.add(LinearExpr.newBuilder());
    }
  }

  List<PostLength> lengths() {
    return cupboard.lengths();
  }

  /** So many posts of a length stand somewhere, made in any of the ways there are. */
  void stand(PostLength length, LinearArgument count) {
    LinearExprBuilder made = LinearExpr.newBuilder();
    for (int[] making : length.makings()) {
      IntVar so = model.newIntVar(0, stock[making[0]], "posts");
      made.add(so);
      for (int kind : making) {
        used.get(kind).add(so);
      }
    }
    model.addEquality(made, count);
  }

  /** To be called when everything stands. */
  void withinStock() {
    for (int kind = 0; kind < stock.length; kind++) {
      model.addLessOrEqual(used.get(kind), stock[kind]);
    }
  }
}
