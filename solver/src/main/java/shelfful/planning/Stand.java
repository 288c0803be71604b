package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.measure.Point;

/**
 * A column plan made ready for planning: its columns by index, what stands on what, and every shelf
 * place. Heights in micrometres.
 */
final class Stand {
  private final LoadRequest request;
  private final Kiln kiln;
  private final ColumnPlan plan;
  private final Optional<JoinedPlan> joined;
  private final PostCupboard cupboard;
  private final List<Spot> spots = new ArrayList<>();
  private final List<List<Spot>> spotsOf = new ArrayList<>();
  private final List<List<Integer>> below = new ArrayList<>();
  private final List<List<Integer>> above = new ArrayList<>();

  Stand(LoadRequest request, ColumnPlan plan) {
    this(request, plan, Optional.empty());
  }

  /** A plan with joined shelves. */
  Stand(JoinedPlan joined) {
    this(joined.request(), joined.plan(), Optional.of(joined));
  }

  /**
   * A kiln's column plans made ready, those with joined shelves among them.
   *
   * @param wanted the id of the only one; empty for all
   */
  static List<Stand> all(LoadRequest request, Optional<String> wanted) {
    List<Stand> stands =
        request.kiln().columnPlans().stream()
            .filter(plan -> wanted.map(plan.id()::equals).orElse(true))
            .sorted(Comparator.comparing(ColumnPlan::id))
            .map(plan -> withJoined(request, plan))
            .collect(Collectors.toCollection(ArrayList::new));
    List<ColumnPlan> own = stands.stream().map(Stand::own).toList();
    own.forEach(
        plan -> JoinedPlan.acrossColumns(request, plan).map(Stand::new).ifPresent(stands::add));
    return stands;
  }

  private static Stand withJoined(LoadRequest request, ColumnPlan plan) {
    return JoinedPlan.withinColumns(request, plan)
        .map(Stand::new)
        .orElseGet(() -> new Stand(request, plan));
  }

  private Stand(LoadRequest request, ColumnPlan plan, Optional<JoinedPlan> joined) {
    this.joined = joined;
    this.request = request;
    this.kiln = request.kiln();
    this.plan = plan;
    this.cupboard = new PostCupboard(request.studio());
    List<String> ids = plan.columns().stream().map(Column::id).toList();
    for (int c = 0; c < ids.size(); c++) {
      Column column = plan.columns().get(c);
      below.add(column.standsOn().stream().map(ids::indexOf).toList());
      above.add(new ArrayList<>());
      for (int lower : below.get(c)) {
        above.get(lower).add(c);
      }
      List<Spot> own = new ArrayList<>();
      for (int p = 0; p < column.places().size(); p++) {
        own.add(
            new Spot(spots.size() + p, c, p, column, column.places().get(p), usable(column, p)));
      }
      spots.addAll(own);
      spotsOf.add(own);
    }
  }

  private List<Shelf> usable(Column column, int place) {
    return column.places().get(place).shelfIds().stream()
        .flatMap(id -> request.studio().shelf(id).stream())
        .filter(shelf -> shelf.count() > 0)
        .filter(
            shelf ->
                shelf.hottest().isEmpty()
                    || !request.firing().cone().isHotterThan(shelf.hottest().get()))
        .toList();
  }

  LoadRequest request() {
    return request;
  }

  Kiln kiln() {
    return kiln;
  }

  ColumnPlan plan() {
    return plan;
  }

  int columns() {
    return plan.columns().size();
  }

  Column column(int index) {
    return plan.columns().get(index);
  }

  /** The column plan as the kiln has it. */
  ColumnPlan own() {
    return joined.map(JoinedPlan::apart).orElse(plan);
  }

  /** Whether shelves are joined here. */
  boolean isJoined() {
    return joined.isPresent();
  }

  /** Whether columns of the kiln's plan are built together here. */
  boolean joinsColumns() {
    return own().columns().size() > plan.columns().size();
  }

  /** The joint across a column's shelves, where two of them are asked about as one. */
  Optional<Joint> joint(int column) {
    return joined.flatMap(plan -> plan.joint(column(column).id()));
  }

  /** How many shelves lie at a spot on each level: two where they are joined. */
  int shelvesAt(Spot spot) {
    return joint(spot.column()).isPresent() ? 2 : 1;
  }

  /** A load of this stand as one of the kiln's own column plan. */
  Load told(Load load) {
    return joined.map(plan -> ApartLoad.of(plan, load)).orElse(load);
  }

  /** A load of the kiln's own column plan as one of this stand; empty when it cannot be that. */
  Optional<Load> takenOver(Load load) {
    return joined.map(plan -> JoinedLoad.of(plan, load)).orElse(Optional.of(load));
  }

  List<Spot> spots() {
    return spots;
  }

  List<Spot> spotsOf(int column) {
    return spotsOf.get(column);
  }

  /** Where a layer of a load lies; it must be of this column plan. */
  LayerSlot slot(LayerPlace layer) {
    for (int c = 0; c < columns(); c++) {
      if (column(c).id().equals(layer.columnId())) {
        return new LayerSlot(c, layer.level() - 1, layer.place());
      }
    }
    throw new IllegalArgumentException("no column " + layer.columnId() + " in " + plan.id());
  }

  /** The posts there are to stand shelves on. */
  PostCupboard cupboard() {
    return cupboard;
  }

  /** Columns that this one stands on. */
  List<Integer> below(int column) {
    return below.get(column);
  }

  /** Columns that stand on this one. */
  List<Integer> above(int column) {
    return above.get(column);
  }

  /** Columns that are neither under nor over this one: beside it. */
  List<Integer> beside(int column) {
    Set<Integer> related = new HashSet<>();
    collect(column, below, related);
    collect(column, above, related);
    List<Integer> beside = new ArrayList<>();
    for (int other = 0; other < columns(); other++) {
      if (!related.contains(other)) {
        beside.add(other);
      }
    }
    return beside;
  }

  private static void collect(int column, List<List<Integer>> arrows, Set<Integer> into) {
    into.add(column);
    arrows.get(column).forEach(next -> collect(next, arrows, into));
  }

  /**
   * Where posts stand on the top level of a column when these of the columns above it are built.
   */
  List<Point> postsOnTop(int column, List<Integer> built) {
    Set<Point> points = new LinkedHashSet<>();
    for (int upper : built) {
      points.addAll(column(upper).posts());
    }
    if (built.stream().allMatch(upper -> below.get(upper).size() == 1)) {
      return List.copyOf(points);
    }
    points.removeIf(point -> !standsOver(column, point));
    return List.copyOf(points);
  }

  /**
   * Whether a point lies over a post of this column: only there can a post of an upper column
   * stand.
   */
  private boolean standsOver(int column, Point point) {
    return column(column).posts().contains(point);
  }

  long chamberHeight() {
    return kiln.chamber().height().micrometres();
  }

  /** The highest a piece may reach. */
  long ceiling() {
    return chamberHeight() - request.studio().rules().clearances().underLid().micrometres();
  }

  long headroom() {
    return request.studio().rules().clearances().headroom().micrometres();
  }

  long leastLayer() {
    return request.studio().rules().clearances().leastShelfToShelf().micrometres();
  }

  long offFloor() {
    return request.studio().rules().clearances().offFloor().micrometres();
  }
}
