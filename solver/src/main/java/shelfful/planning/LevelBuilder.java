package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import shelfful.measure.Point;
import shelfful.planning.LayerFiller.Shelving;
import shelfful.planning.StackNeeds.Level;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/**
 * Builds a new level into a sketch: chooses a height class whose posts still go into the column,
 * and fills its shelves. A height class is the height of some free lot: a layer is made as high as
 * its tallest piece needs.
 */
final class LevelBuilder {
  private final SketchJudge judge;
  private final Appeal appeal;
  private final LayerFiller filler;
  private final MissingMates mates;

  LevelBuilder(SketchJudge judge, Appeal appeal) {
    this.judge = judge;
    this.appeal = appeal;
    this.filler = new LayerFiller(judge, appeal);
    this.mates = new MissingMates(judge, filler);
  }

  /**
   * A level that could be built.
   *
   * @param rate worth it may hold for the height it takes
   */
  private record Offer(int column, int position, long height, LevelStand level, double rate) {}

  /** The stack when one of its levels carries something. */
  @FunctionalInterface
  private interface StackWith {
    Optional<Stacking> with(Level level);
  }

  /** Whether shelves are filled only as far as goes without asking. */
  void coarsely(boolean only) {
    filler.coarsely(only);
  }

  /** Builds the best-looking level of any column on top of it; false when none can be built. */
  boolean buildBest(Sketch sketch, DoubleSupplier noise) {
    List<Offer> offers = new ArrayList<>();
    for (int c = 0; c < sketch.columns(); c++) {
      offers.addAll(offers(sketch, c, sketch.levels(c), noise));
    }
    return buildFirst(sketch, offers, noise);
  }

  /** Builds a level at a position of a column; false when none can be built. */
  boolean build(Sketch sketch, int column, int position, DoubleSupplier noise) {
    return buildFirst(sketch, offers(sketch, column, position, noise), noise);
  }

  private boolean buildFirst(Sketch sketch, List<Offer> offers, DoubleSupplier noise) {
    offers.sort(Comparator.comparingDouble(Offer::rate).reversed());
    for (Offer offer : offers) {
      if (fill(sketch, offer, noise)) {
        return true;
      }
    }
    return false;
  }

  private List<Offer> offers(Sketch sketch, int column, int position, DoubleSupplier noise) {
    List<Offer> offers = new ArrayList<>();
    if (judge.staying().locked().isSealed(column)) {
      return offers;
    }
    Pool pool = Pool.of(sketch, judge.ware());
    StackNeeds needs = StackNeeds.of(sketch, judge.ware().lots());
    long[] nothing = new long[judge.stand().spotsOf(column).size()];
    StackWith stack = level -> judge.stack(needs.with(column, position, level));
    for (long height : classes(pool)) {
      for (LevelStand level : stands(stack, column, position, new Level(height, nothing))) {
        double rate = rate(column, level, height, pool) * noise.getAsDouble();
        offers.add(new Offer(column, position, height, level, rate));
      }
    }
    return offers;
  }

  /** A level on the preferred shelves, and where those carry little also on the strongest. */
  private static List<LevelStand> stands(StackWith stack, int column, int position, Level least) {
    List<LevelStand> stands = new ArrayList<>();
    stack.with(least).map(found -> found.level(column, position)).ifPresent(stands::add);
    boolean limited =
        stands.stream()
            .flatMap(level -> level.shelves().stream())
            .anyMatch(shelf -> shelf.massLimit().isPresent());
    if (limited) {
      long[] much = new long[least.grams().length];
      Arrays.fill(much, Long.MAX_VALUE);
      stack
          .with(new Level(least.tallest(), much))
          .map(found -> found.level(column, position))
          .filter(level -> !level.shelves().equals(stands.get(0).shelves()))
          .ifPresent(stands::add);
    }
    return stands;
  }

  private long[] classes(Pool pool) {
    return judge.ware().lots().stream()
        .filter(lot -> pool.free()[lot.index()] > 0)
        .mapToLong(Lot::height)
        .distinct()
        .sorted()
        .toArray();
  }

  private double rate(int column, LevelStand level, long height, Pool pool) {
    double area = 0;
    for (Spot spot : judge.stand().spotsOf(column)) {
      area += judge.space(spot, level, 0).area();
    }
    boolean top = level.postsOn().isEmpty();
    long reach = top ? height : level.room();
    long taken = reach + judge.stand().headroom() + level.z() - level.underside();
    return appeal.fill(area, reach, pool) / taken;
  }

  private boolean fill(Sketch sketch, Offer offer, DoubleSupplier noise) {
    int places = judge.stand().spotsOf(offer.column()).size();
    sketch.insertLevel(offer.column(), offer.position(), places);
    int added = fillShelves(sketch, offer, noise);
    if (added == 0) {
      sketch.removeLevel(offer.column(), offer.position());
    }
    return added > 0;
  }

  private int fillShelves(Sketch sketch, Offer offer, DoubleSupplier noise) {
    Pool pool = Pool.of(sketch, judge.ware());
    int[] order = order(offer.height(), offer.level().room(), noise);
    Set<Zone> zones = zones(offer);
    int added = 0;
    for (Spot spot : judge.stand().spotsOf(offer.column())) {
      int[] counts = sketch.counts(offer.column(), offer.position(), spot.place());
      added += filler.fill(new Shelving(spot, offer.level(), zones), counts, pool, order);
    }
    return added;
  }

  /** Fills a level where it is: for the best-looking height class that it can be raised to. */
  void refill(Sketch sketch, int column, int position, DoubleSupplier noise) {
    Pool pool = Pool.of(sketch, judge.ware());
    StackNeeds needs = StackNeeds.of(sketch, judge.ware().lots());
    Level now = needs.level(column, position);
    StackWith stack = level -> judge.stack(needs.instead(column, position, level));
    List<Offer> offers = new ArrayList<>();
    for (long height : classes(pool)) {
      Level raised = new Level(Math.max(height, now.tallest()), now.grams());
      for (LevelStand level : stands(stack, column, position, raised)) {
        double rate = rate(column, level, raised.tallest(), pool) * noise.getAsDouble();
        offers.add(new Offer(column, position, raised.tallest(), level, rate));
      }
    }
    offers.sort(Comparator.comparingDouble(Offer::rate).reversed());
    for (Offer offer : offers) {
      if (fillShelves(sketch, offer, noise) > 0) {
        return;
      }
    }
  }

  /** Where the level lies now, and on top also where it will lie when another is built over it. */
  private Set<Zone> zones(Offer offer) {
    Set<Zone> zones = EnumSet.of(judge.zone(offer.level()));
    if (offer.level().postsOn().isEmpty()) {
      LevelStand now = offer.level();
      List<Point> posts = judge.stand().column(offer.column()).posts();
      zones.add(
          judge.zone(
              new LevelStand(now.underside(), now.z(), offer.height(), now.shelves(), posts)));
    }
    return zones;
  }

  /** Kinds that need this height first, then by worth for their room. */
  private int[] order(long height, long room, DoubleSupplier noise) {
    List<WareKind> kinds = judge.ware().kinds();
    double[] score = new double[kinds.size()];
    double needsHeight = noise.getAsDouble() > 0.7 ? 4 : 1;
    for (WareKind kind : kinds) {
      List<Lot> lots = appeal.lotsOfKind(kind.index());
      double best = lots.stream().mapToDouble(appeal::perRoom).max().orElse(0);
      boolean tall = lots.stream().anyMatch(lot -> lot.height() > 0.8 * height);
      boolean tooTall = lots.stream().allMatch(lot -> lot.height() > room);
      score[kind.index()] = tooTall ? 0 : best * (tall ? needsHeight : 1) * noise.getAsDouble();
    }
    return byScore(score);
  }

  static int[] byScore(double[] score) {
    return IntStream.range(0, score.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> score[i]).reversed())
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Brings in what sets lack, as far as there is room. */
  void completeSets(Sketch sketch) {
    mates.bringIn(sketch);
  }

  /** Adds free pieces to every shelf as it stands, the given levels' order being that of trying. */
  int squeezeIn(Sketch sketch, List<int[]> levels, DoubleSupplier noise) {
    Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
    if (stacking.isEmpty()) {
      return 0;
    }
    Pool pool = Pool.of(sketch, judge.ware());
    if (Arrays.stream(pool.free()).sum() == 0) {
      return 0;
    }
    int added = 0;
    for (int[] at : levels) {
      LevelStand level = stacking.get().level(at[0], at[1]);
      for (Spot spot : judge.stand().spotsOf(at[0])) {
        int[] counts = sketch.counts(at[0], at[1], spot.place());
        added += filler.fill(spot, level, counts, pool, order(0, level.room(), noise));
      }
    }
    return added;
  }
}
