package shelfful.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Shape;
import shelfful.measure.Point;
import shelfful.packing.Part;

/**
 * Makes the limits of one level. For each height at which some part of a piece begins, for a few
 * rooms round the shelf (the wider ones hold every body, the tighter ones cut off what wide ware
 * has beyond the edge) and for a few reference radii: one limit from {@link CellBound} and one on
 * the number of pieces that are at least so large.
 */
final class LevelLimits {
  private static final int RADII = 5;
  private static final int ROOMS = 3;

  /** Savings at the edge that are tried, as shares of how far some ware reaches past it. */
  private static final double[] PAST = {0.3, 0.6};

  /** A room is taken for round when the disc round it is larger by no more than this. */
  private static final double ROUNDISH = 1.05;

  private final LevelRoom level;
  private final List<PieceSizes> pieces;
  private final double halfGap;
  private final List<ConvexPolygon> axes = new ArrayList<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Limit> proven = new ArrayList<>();
  private double height;

  /** A limit before posts take their part. */
  private record Draft(
      LimitCause cause, CutRoom room, CellPrices prices, double height, double[] shares) {}

  LevelLimits(LevelRoom level, List<PieceSizes> pieces) {
    this.level = level;
    this.pieces = pieces;
    this.halfGap = pieces.stream().mapToDouble(PieceSizes::halfGap).max().orElse(0);
    pieces.forEach(piece -> axes.add(level.axis(piece)));
    TreeSet<Double> heights = new TreeSet<>();
    for (PieceSizes piece : pieces) {
      piece.body().parts().stream().map(Part::from).forEach(heights::add);
    }
    heights.forEach(this::draft);
  }

  /** Whether a piece can stand on the level at all. */
  boolean hasPlace(int piece) {
    return !axes.get(piece).isEmpty();
  }

  /** Where the axis of a piece can be. */
  ConvexPolygon axis(int piece) {
    return axes.get(piece);
  }

  /**
   * Limits of pieces that stand in a part of the level only.
   *
   * @param kept where the axis of each of them can be, by offer; an empty polygon for the others
   */
  List<Limit> tall(List<ConvexPolygon> kept) {
    TreeSet<Double> heights = new TreeSet<>();
    ConvexPolygon all = null;
    double growth = 0;
    for (int i = 0; i < pieces.size(); i++) {
      if (!kept.get(i).isEmpty()) {
        all = all == null ? kept.get(i) : all.hullWith(kept.get(i), Side.EDGE);
        PieceSizes piece = pieces.get(i);
        piece.body().parts().stream().map(Part::from).forEach(heights::add);
        growth = Math.max(growth, piece.bodyInside() + piece.growth());
      }
    }
    List<Limit> limits = new ArrayList<>();
    if (all == null) {
      return limits;
    }
    double widest = growth;
    ConvexPolygon room =
        level.room(level.wallInset(halfGap), Double.NEGATIVE_INFINITY).near(all, widest);
    for (double height : heights) {
      addTall(limits, room, kept, height);
    }
    return limits;
  }

  private void addTall(
      List<Limit> limits, ConvexPolygon room, List<ConvexPolygon> kept, double height) {
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Optional<Shape> shape = pieces.get(i).sectionAt(height);
      if (shape.isPresent() && !kept.get(i).isEmpty()) {
        double toWall = room.leastDepth(kept.get(i), Side.WALL);
        double toEdge = room.leastDepth(kept.get(i), Side.EDGE);
        sections.add(Section.of(i, shape.get(), pieces.get(i).growth(), toWall, toEdge));
      }
    }
    if (sections.isEmpty()) {
      return;
    }
    CutRoom cut = new CutRoom(room, sections, halfGap, false, new RoomRim(room));
    double[] radii = sections.stream().mapToDouble(Section::inner).toArray();
    for (double radius : some(radii, ROOMS)) {
      CellPrices prices = CellPrices.tunedTo(radius);
      double[] shares = cut.shares(pieces.size(), prices);
      double largest = Arrays.stream(shares).max().orElse(0);
      double there = Math.max(CellBound.room(room, prices), largest);
      Limit limit = new Limit(LimitCause.SPACING, shares, there);
      limits.add(limit);
      count(limit, cut).ifPresent(limits::add);
    }
  }

  private void draft(double at) {
    this.height = at;
    List<Integer> there = new ArrayList<>();
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Optional<Shape> shape = pieces.get(i).sectionAt(at);
      if (shape.isPresent() && hasPlace(i)) {
        there.add(i);
        shapes.add(shape.get());
      }
    }
    double[] over = new double[there.size()];
    double[] radii = new double[there.size()];
    for (int j = 0; j < over.length; j++) {
      PieceSizes piece = pieces.get(there.get(j));
      over[j] = shapes.get(j).outerRadius() + piece.growth() - level.insideShelf(piece);
      radii[j] = shapes.get(j).innerRadius() + piece.growth();
    }
    if (!there.isEmpty()) {
      records(there, radii);
    }
    TreeSet<Double> overhangs = some(over, ROOMS);
    for (double overhang : overhangs) {
      ConvexPolygon room = level.room(level.wallInset(halfGap), -overhang);
      if (!room.isEmpty()) {
        CutRoom cut = cut(room, there, shapes);
        if (overhang == overhangs.last()) {
          add(LimitCause.AREA, cut, CellPrices.none());
        }
        double past = overhangs.last() - overhang;
        TreeSet<Double> tuned = some(radii, RADII);
        draft(cut, tuned, past);
        if (cut.isPassed()) {
          draft(cut.counting(false), tuned, past);
        }
      }
    }
  }

  private void draft(CutRoom cut, TreeSet<Double> tuned, double past) {
    tuned.forEach(radius -> draft(cut, CellPrices.tunedTo(radius), past));
    RoundRoom round = RoundRoom.round(cut.polygon());
    if (round.area() < ROUNDISH * cut.polygon().area()) {
      CutRoom disc = round(cut, round);
      tuned.forEach(radius -> add(LimitCause.SPACING, disc, round.tunedTo(radius)));
    }
  }

  /** Pieces at least so large in the disc that holds all their axes, against the proven records. */
  private void records(List<Integer> there, double[] radii) {
    int[] order =
        IntStream.range(0, radii.length)
            .boxed()
            .sorted(Comparator.comparingDouble(j -> -radii[j]))
            .mapToInt(j -> j)
            .toArray();
    double[] shares = new double[pieces.size()];
    ConvexPolygon axis = ConvexPolygon.nowhere();
    for (int at = 0; at < order.length; at++) {
      int j = order[at];
      shares[there.get(j)] = 1;
      axis = axis.hullWith(axes.get(there.get(j)), Side.EDGE);
      int most = ProvenRecords.most(RoundRoom.round(axis).radius() / radii[j] + 1);
      if (most == Integer.MAX_VALUE) {
        return;
      }
      proven.add(new Limit(LimitCause.SPACING, shares.clone(), most));
    }
  }

  /** A few of some values: the least, the greatest, and evenly between. */
  private static TreeSet<Double> some(double[] values, int count) {
    double[] sorted = Arrays.stream(values).sorted().distinct().toArray();
    TreeSet<Double> some = new TreeSet<>();
    for (int i = 0; sorted.length > 0 && i < count; i++) {
      some.add(sorted[i * (sorted.length - 1) / (count - 1)]);
    }
    return some;
  }

  private CutRoom cut(ConvexPolygon room, List<Integer> there, List<Shape> shapes) {
    List<Section> sections = new ArrayList<>();
    for (int j = 0; j < there.size(); j++) {
      int i = there.get(j);
      sections.add(
          Section.of(
              i,
              shapes.get(j),
              pieces.get(i).growth(),
              room.leastDepth(axes.get(i), Side.WALL),
              room.leastDepth(axes.get(i), Side.EDGE)));
    }
    return new CutRoom(room, sections, halfGap, true, new RoomRim(room));
  }

  /** The same in the disc round the room. */
  private CutRoom round(CutRoom cut, RoundRoom round) {
    List<Section> sections = new ArrayList<>();
    for (Section one : cut.sections()) {
      sections.add(one.inRound(round.leastDepth(axes.get(one.piece()))));
    }
    return new CutRoom(cut.polygon(), sections, halfGap, cut.whole(), round);
  }

  /**
   * Limits with several savings at the edge: for what stays inside, for what may reach past it, and
   * for what reaches past it by so much that only a price on the edge makes it count.
   */
  private void draft(CutRoom cut, CellPrices prices, double past) {
    add(LimitCause.SPACING, cut, prices);
    if (cut.polygon().length(Side.EDGE) > 0) {
      add(LimitCause.SPACING, cut, prices.withEdge(0));
      add(LimitCause.SPACING, cut, prices.withEdge(-prices.edge()));
      for (double share : past > 0 ? PAST : new double[0]) {
        add(LimitCause.SPACING, cut, prices.withEdge(-share * past));
      }
    }
  }

  private void add(LimitCause cause, CutRoom cut, CellPrices prices) {
    drafts.add(new Draft(cause, cut, prices, height, cut.shares(pieces.size(), prices)));
  }

  /**
   * All limits when posts stand at these points of the level.
   *
   * @param shortest the posts are at least so long, mm: higher up they need not be there
   */
  List<Limit> limits(List<Point> posts, double shortest) {
    List<Limit> limits = new ArrayList<>(proven);
    double[] grams = pieces.stream().mapToDouble(piece -> piece.offer().grams()).toArray();
    limits.add(new Limit(LimitCause.MASS, grams, level.grams()));
    double radius = level.postRadius() + level.rules().clearances().wareToPost().millimetres();
    for (Draft draft : drafts) {
      double room =
          draft.room.room(draft.prices)
              - (draft.height < shortest
                  ? draft.room.posts(posts, radius, draft.shares, draft.prices)
                  : 0);
      double largest = Arrays.stream(draft.shares).max().orElse(0);
      Limit limit = new Limit(draft.cause, draft.shares, Math.max(room, largest));
      limits.add(limit);
      if (draft.cause == LimitCause.SPACING) {
        count(limit, draft.room).ifPresent(limits::add);
      }
    }
    return limits;
  }

  /** No more pieces that take at least half of what the largest takes than their least allows. */
  private Optional<Limit> count(Limit limit, CutRoom room) {
    double largest = Arrays.stream(limit.shares()).max().orElse(0);
    double[] shares = new double[pieces.size()];
    double least = Double.POSITIVE_INFINITY;
    for (Section section : room.sections()) {
      double share = limit.shares()[section.piece()];
      if (share > largest / 2) {
        shares[section.piece()] = 1;
        least = Math.min(least, share);
      }
    }
    if (Double.isInfinite(least)) {
      return Optional.empty();
    }
    double most = Math.floor(limit.room() / least + 1e-9);
    return Optional.of(new Limit(limit.cause(), shares, Math.max(1, most)));
  }
}
