package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shelfful.geometry.Bound;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Gap;
import shelfful.geometry.HalfPlane;
import shelfful.geometry.Pose;
import shelfful.geometry.Region;
import shelfful.geometry.Shape;
import shelfful.kiln.KeepOut;
import shelfful.kiln.ShelfPlace;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.packing.Applies;
import shelfful.packing.BodyKind;
import shelfful.packing.FixedBodies;
import shelfful.packing.Obstacle;
import shelfful.packing.Placed;
import shelfful.packing.Room;
import shelfful.packing.ShelfSpace;
import shelfful.studio.Clearances;

/**
 * The room on every shelf place, as {@code packing} asks for it: where feet and bodies may be, and
 * what stands in the way. In the shelf's own frame; spaces that come out alike share a number, so
 * their answers are shared.
 */
final class ShelfSpaces {
  /** Taller than any chamber, in millimetres: the height of what is in the way at every height. */
  private static final double EVERY_HEIGHT = 10_000;

  /** In millimetres: without any posts no shelf ever stands, but it is still asked about. */
  private static final double LEAST_POST = 1;

  private final Stand stand;
  private final double widestGap;
  private final double postRadius;
  private final Clearances clearances;
  private final List<List<Room>> rooms = new ArrayList<>();
  private final List<List<Obstacle>> neighbours = new ArrayList<>();
  private final List<List<Obstacle>> keptBeside = new ArrayList<>();
  private final Map<String, NumberedSpace> byContent = new HashMap<>();
  private final Map<Variant, NumberedSpace> byVariant = new ConcurrentHashMap<>();
  private final Map<Around, NumberedSpace> byKept = new HashMap<>();

  ShelfSpaces(Stand stand, double widestGap, double widestPost) {
    this.stand = stand;
    this.widestGap = widestGap;
    this.postRadius = Math.max(LEAST_POST, widestPost) / 2;
    this.clearances = stand.request().studio().rules().clearances();
    for (Spot spot : stand.spots()) {
      Region body = bodyRegion(spot);
      rooms.add(rooms(spot, body));
      neighbours.add(postsBeside(spot, body));
      keptBeside.add(new ArrayList<>());
    }
  }

  /**
   * A space and its number; equal numbers mean equal spaces.
   *
   * @param text what it is like; equal texts mean equal spaces in other runs, too
   * @param area of the foot's room less what is taken, in square millimetres: a guide for filling
   * @param fixed bodies that stay on it
   * @param joint across it, where two shelves are asked about as one
   */
  record NumberedSpace(
      int number,
      String text,
      ShelfSpace space,
      double area,
      List<Placed> fixed,
      Optional<Joint> joint) {
    /**
     * Whether every shelf carries what stands on it, where that depends on the places.
     *
     * @param grams of one body by kind
     */
    boolean carries(List<Placed> bodies, long[] grams) {
      return joint.isEmpty() || joint.get().carries(bodies, grams);
    }
  }

  /** A space with some kept lots on it. */
  private record Around(int space, List<Integer> lots) {}

  /**
   * Which version of a spot's space is meant.
   *
   * @param posts standing on the shelf, chamber frame
   * @param keepOuts that reach into the layer, by index
   * @param z top of the shelf in micrometres, 0 when no keep-out matters
   */
  private record Variant(int spot, List<Point> posts, List<Integer> keepOuts, long z) {}

  /**
   * The space on a spot's shelf at a height.
   *
   * @param tallest the highest that anything on it reaches over the shelf, in micrometres
   */
  NumberedSpace space(Spot spot, List<Point> posts, long z, long tallest) {
    return byVariant.computeIfAbsent(
        variant(spot, posts, z, tallest),
        v -> number(build(spot, v, beside(spot)), stand.joint(spot.column())));
  }

  private Variant variant(Spot spot, List<Point> posts, long z, long tallest) {
    List<Integer> keepOuts = new ArrayList<>();
    for (int k = 0; k < stand.kiln().keepOuts().size(); k++) {
      KeepOut keepOut = stand.kiln().keepOuts().get(k);
      boolean over = keepOut.bottom().micrometres() >= z + tallest;
      boolean under = keepOut.top().micrometres() <= z;
      if (!over && !under && mayMatter(spot, keepOut)) {
        keepOuts.add(k);
      }
    }
    return new Variant(spot.index(), posts, keepOuts, keepOuts.isEmpty() ? 0 : z);
  }

  private List<Obstacle> beside(Spot spot) {
    List<Obstacle> beside = new ArrayList<>(neighbours.get(spot.index()));
    beside.addAll(keptBeside.get(spot.index()));
    return beside;
  }

  /**
   * A space in which kept lots stand.
   *
   * @param fixed their bodies
   * @param taken the room they take, in square millimetres
   */
  NumberedSpace around(NumberedSpace bare, List<Integer> lots, List<Placed> fixed, double taken) {
    NumberedSpace known = byKept.get(new Around(bare.number(), lots));
    if (known == null) {
      int number = byContent.size() + byKept.size();
      double left = Math.max(1, bare.area() - taken);
      known = new NumberedSpace(number, bare.text(), bare.space(), left, fixed, bare.joint());
      byKept.put(new Around(bare.number(), lots), known);
    }
    return known;
  }

  /**
   * Keeps the shelves beside a spot clear of ware that stays and stands over the border to them: at
   * whatever height it comes to stand.
   */
  void clear(Spot spot, Placed body, BodyKind kind) {
    for (Spot other : stand.spots()) {
      if (isBeside(spot, other)) {
        Pose there = other.frame().toShelf(spot.frame().toChamber(body.pose()));
        double clearance = asked(Length.ofMillimetres(widestGap)) + kind.tolerance();
        keptBeside
            .get(other.index())
            .addAll(FixedBodies.inTheWay(kind, there, EVERY_HEIGHT, clearance));
      }
    }
  }

  /** What is in the way of ware that stays, as {@link #space} has it. */
  ShelfSpace forKept(Spot spot, List<Point> posts, long z, long tallest) {
    return build(spot, variant(spot, posts, z, tallest), neighbours.get(spot.index()));
  }

  private boolean isBeside(Spot spot, Spot other) {
    boolean sameColumn = other.column() == spot.column() && other.place() != spot.place();
    return sameColumn || stand.beside(spot.column()).contains(other.column());
  }

  /** The rooms of a spot. */
  List<Room> rooms(Spot spot) {
    return rooms.get(spot.index());
  }

  /** The rooms of a spot as if no other shelf lay beside it. */
  List<Room> openRooms(Spot spot) {
    Region chamber = KilnRegions.chamber(stand.kiln().chamber().floorPlan());
    return rooms(spot, KilnRegions.in(spot.frame(), chamber));
  }

  private synchronized NumberedSpace number(ShelfSpace space, Optional<Joint> joint) {
    String content = SpaceText.of(space) + joint.map(Joint::toString).orElse("");
    NumberedSpace known = byContent.get(content);
    if (known != null) {
      return known;
    }
    NumberedSpace numbered =
        new NumberedSpace(
            byContent.size() + byKept.size(),
            content,
            space,
            space.rooms().get(0).region().area(),
            List.of(),
            joint);
    byContent.put(content, numbered);
    return numbered;
  }

  private ShelfSpace build(Spot spot, Variant variant, List<Obstacle> beside) {
    List<Obstacle> obstacles = new ArrayList<>(beside);
    for (Point post : variant.posts()) {
      obstacles.add(post(spot.frame(), post));
    }
    stand
        .joint(spot.column())
        .map(joint -> Obstacle.toFeet(joint.strip(), asked(clearances.footToShelfEdge())))
        .ifPresent(obstacles::add);
    for (int k : variant.keepOuts()) {
      obstacles.add(keepOut(spot.frame(), stand.kiln().keepOuts().get(k), variant.z()));
    }
    return new ShelfSpace(rooms.get(spot.index()), obstacles);
  }

  private Obstacle post(ShelfFrame frame, Point at) {
    double[] centre = frame.toShelf(at.x().millimetres(), at.y().millimetres());
    double clearance = asked(clearances.wareToPost());
    return new Obstacle(new Disc(centre[0], centre[1], postRadius), 0, EVERY_HEIGHT, clearance);
  }

  private Obstacle keepOut(ShelfFrame frame, KeepOut keepOut, long z) {
    double from = (keepOut.bottom().micrometres() - z) / 1000.0;
    double to = (keepOut.top().micrometres() - z) / 1000.0;
    return new Obstacle(
        bar(frame, keepOut), Math.max(0, from), to, asked(clearances.wareToKeepOut()));
  }

  private static Shape bar(ShelfFrame frame, KeepOut keepOut) {
    double[] from =
        frame.toShelf(keepOut.from().x().millimetres(), keepOut.from().y().millimetres());
    double[] to = frame.toShelf(keepOut.to().x().millimetres(), keepOut.to().y().millimetres());
    double radius = keepOut.across().millimetres() / 2;
    return keepOut.from().equals(keepOut.to())
        ? new Disc(from[0], from[1], radius)
        : new Capsule(from[0], from[1], to[0], to[1], radius);
  }

  /** Whether a keep-out comes so near the shelf's room that ware on it could be in its way. */
  private boolean mayMatter(Spot spot, KeepOut keepOut) {
    double reach = asked(clearances.wareToKeepOut()) + clearances.wareToWall().millimetres();
    Region body = rooms.get(spot.index()).get(1).region();
    var box = body.boundingDisc();
    Shape bar = bar(spot.frame(), keepOut);
    double apart = Gap.between(bar, Pose.HERE, new Disc(box.x(), box.y(), box.radius()), Pose.HERE);
    return apart < reach;
  }

  /** The chamber less what belongs to shelves beside this one, for a clearance of the wall's. */
  private Region bodyRegion(Spot spot) {
    Region chamber = KilnRegions.chamber(stand.kiln().chamber().floorPlan());
    List<Bound> bounds = new ArrayList<>(KilnRegions.in(spot.frame(), chamber).bounds());
    double wall = asked(clearances.wareToWall());
    Region own = KilnRegions.in(toChamber(spot.where()), outline(spot));
    for (Spot other : stand.spots()) {
      if (isBeside(spot, other)) {
        Region theirs = KilnRegions.in(toChamber(other.where()), outline(other));
        HalfPlane border = spot.frame().toShelf(Territories.border(own, theirs));
        double shift = wall - widestGap / 2 - Margin.FOR_ROUNDING;
        bounds.add(new HalfPlane(border.nx(), border.ny(), border.offset() + shift));
      }
    }
    return new Region(bounds);
  }

  /** The frame that undoes a place's own: from its shelf's frame to the chamber's. */
  private static ShelfFrame toChamber(ShelfPlace place) {
    ShelfFrame frame = ShelfFrame.of(place);
    double[] origin = frame.toShelf(0, 0);
    return new ShelfFrame(origin[0], origin[1], -frame.turn());
  }

  /** What every kind of shelf that may lie here covers. */
  private Region outline(Spot spot) {
    return spot.where().shelfIds().stream()
        .flatMap(id -> stand.request().studio().shelf(id).stream())
        .map(shelf -> KilnRegions.shelf(shelf.outline()))
        .reduce(Region::and)
        .orElseThrow();
  }

  private List<Room> rooms(Spot spot, Region body) {
    List<Room> rooms = new ArrayList<>();
    Region shelf = outline(spot);
    rooms.add(new Room(shelf, asked(clearances.footToShelfEdge()), Applies.FOOT));
    rooms.add(new Room(body, asked(clearances.wareToWall()), Applies.BODY));
    if (!stand.request().studio().rules().bellyMayPassEdge()) {
      rooms.add(new Room(shelf, Margin.FOR_ROUNDING, Applies.BODY));
    }
    return rooms;
  }

  /**
   * Posts of columns beside this one stand at heights of their own: they are in the way at every
   * height.
   */
  private List<Obstacle> postsBeside(Spot spot, Region body) {
    List<Obstacle> posts = new ArrayList<>();
    double reach = 2 * postRadius + clearances.wareToPost().millimetres();
    for (int other : stand.beside(spot.column())) {
      for (Point at : stand.column(other).posts()) {
        double[] centre = spot.frame().toShelf(at.x().millimetres(), at.y().millimetres());
        Disc dot = new Disc(0, 0, 1);
        if (Gap.inside(dot, Pose.at(centre[0], centre[1]), body) > -reach) {
          posts.add(post(spot.frame(), at));
        }
      }
    }
    return posts;
  }

  private static double asked(Length clearance) {
    return clearance.millimetres() + Margin.FOR_ROUNDING;
  }
}
