package shelfful.planning;

import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.geometry.Pose;
import shelfful.kiln.Shelf;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.planning.PieceDeal.Dealt;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;
import shelfful.planning.Stacking.PostGroup;
import shelfful.planning.Tower.Storey;
import shelfful.ware.Piece;

/**
 * Writes a sketch out as a load: millimetres in the chamber, single pieces, standing posts,
 * reasons.
 */
final class LoadComposer {
  private final SketchJudge judge;
  private final Settler settler;
  private final Optional<Load> earlier;
  private final FiringDoor door;
  private final WaitingReasons reasons;

  /** Chooses the final setting of a shelf. */
  @FunctionalInterface
  interface Settler {
    Packed settle(NumberedSpace space, int[] kinds, Packed found);
  }

  /**
   * A composer for sketches of one judge.
   *
   * @param earlier a load whose pieces stay where they stood as far as the sketch has it so
   */
  LoadComposer(SketchJudge judge, Settler settler, Optional<Load> earlier) {
    this.judge = judge;
    this.settler = settler;
    this.earlier = earlier;
    this.door = new FiringDoor(judge.stand().request());
    this.reasons = new WaitingReasons(judge);
  }

  Load compose(Sketch sketch) {
    Stacking stacking =
        judge
            .judge(sketch)
            .stacking()
            .orElseThrow(() -> new IllegalStateException("a sketch that cannot stand was kept"));
    Writing writing = new Writing(sketch, stacking);
    List<Layer> layers = writing.layers();
    List<LeftOut> waiting = new ArrayList<>(judge.ware().waiting());
    waiting.addAll(reasons.of(sketch, stacking, writing.remaining()));
    Load load =
        new Load(
            judge.stand().request(),
            judge.stand().plan().id(),
            layers,
            writing.posts(layers),
            inListOrder(waiting));
    return judge.stand().told(load);
  }

  private List<LeftOut> inListOrder(List<LeftOut> waiting) {
    Map<String, LeftOut> byPiece = new HashMap<>();
    waiting.forEach(out -> byPiece.put(out.pieceId(), out));
    return judge.stand().request().pieces().stream()
        .map(Piece::id)
        .filter(byPiece::containsKey)
        .map(byPiece::get)
        .toList();
  }

  /** One load being written. */
  private final class Writing {
    private final Sketch sketch;
    private final Stacking stacking;
    private final PieceDeal deal = new PieceDeal(judge.ware(), earlier);

    /** The spot and the level of each layer, in the layers' order. */
    private final List<Spot> spots = new ArrayList<>();

    private final List<Integer> levels = new ArrayList<>();

    Writing(Sketch sketch, Stacking stacking) {
      this.sketch = sketch;
      this.stacking = stacking;
    }

    List<Deque<Piece>> remaining() {
      return deal.remaining();
    }

    List<Layer> layers() {
      List<Packed> settled = new ArrayList<>();
      List<PieceDeal.Shelf> shelves = new ArrayList<>();
      for (int c = 0; c < sketch.columns(); c++) {
        for (int l = 0; l < sketch.levels(c); l++) {
          for (Spot spot : judge.stand().spotsOf(c)) {
            settled.add(settle(spot, l));
            shelves.add(shelf(spot, l, settled.get(settled.size() - 1)));
            spots.add(spot);
            levels.add(l);
          }
        }
      }
      deal.deal(shelves);
      List<Layer> layers = new ArrayList<>();
      for (int i = 0; i < shelves.size(); i++) {
        layers.add(layer(i, placements(i, settled.get(i), shelves.get(i))));
      }
      return layers;
    }

    private Packed settle(Spot spot, int l) {
      LevelStand level = stacking.level(spot.column(), l);
      int[] counts = sketch.counts(spot.column(), l, spot.place());
      Packed found = judge.packed(spot, level, counts, null);
      if (found == null) {
        throw new IllegalStateException("a layer that holds too much was kept");
      }
      return settler.settle(judge.asked(spot, level, counts), judge.movable(counts), found);
    }

    private PieceDeal.Shelf shelf(Spot spot, int l, Packed setting) {
      int[] counts = sketch.counts(spot.column(), l, spot.place()).clone();
      judge.staying().keptOf(counts).forEach(lot -> counts[lot] = 0);
      return new PieceDeal.Shelf(
          new LayerPlace(spot.owner().id(), l + 1, spot.place()),
          counts,
          setting.bodies().stream().map(Placed::kind).toList(),
          setting.bodies().stream().map(body -> at(spot, body)).toList());
    }

    private static Point at(Spot spot, Placed body) {
      Pose pose = spot.frame().toChamber(body.pose());
      return Point.ofMillimetres(pose.x(), pose.y());
    }

    private Layer layer(int index, List<Placement> placements) {
      Spot spot = spots.get(index);
      LevelStand level = stacking.level(spot.column(), levels.get(index));
      return new Layer(
          "L" + (index + 1),
          spot.owner().id(),
          levels.get(index) + 1,
          spot.place(),
          level.shelves().get(spot.place()).id(),
          new Length(level.z()),
          placements);
    }

    private List<Placement> placements(int index, Packed setting, PieceDeal.Shelf shelf) {
      Spot spot = spots.get(index);
      List<Placement> placements = new ArrayList<>();
      for (int lot : judge.staying().lotsOn(spot.column(), levels.get(index), spot.place())) {
        judge.ware().lots().get(lot).pieces().forEach(piece -> placements.add(kept(piece)));
      }
      for (int i = 0; i < setting.bodies().size(); i++) {
        Placed body = setting.bodies().get(i);
        Pose pose = spot.frame().toChamber(body.pose());
        boolean turns = judge.ware().kinds().get(body.kind()).body().mayTurn();
        Angle turn = turns ? Angle.ofRadians(pose.angle()) : Angle.ZERO;
        placements.addAll(placements(shelf.body(i), at(spot, body), turn));
      }
      return placements;
    }

    private List<Placement> placements(Dealt body, Point at, Angle turn) {
      if (body.lot().tower().isEmpty()) {
        Piece piece = body.pieces().get(0);
        return List.of(new Placement(piece.id(), at, turn, door.catcher(piece).isPresent()));
      }
      List<Placement> pile = new ArrayList<>();
      for (int i = 0; i < body.pieces().size(); i++) {
        Storey storey = body.lot().tower().get().storeys().get(i);
        String on = i == 0 ? "" : body.pieces().get(i - 1).id();
        Rest rest = storey.way().map(way -> Rest.on(on, way, storey.lift())).orElse(Rest.ON_SHELF);
        Rest lying = storey.upsideDown() && i == 0 ? Rest.ON_ITS_RIM : rest;
        pile.add(new Placement(body.pieces().get(i).id(), at, turn, false, lying));
      }
      return pile;
    }

    private Placement kept(Piece piece) {
      PinnedPiece pin = judge.staying().pin(piece.id());
      boolean catcher = door.catcher(piece).isPresent();
      return new Placement(piece.id(), pin.at(), pin.turn(), catcher, pin.rest());
    }

    List<StandingPost> posts(List<Layer> layers) {
      PostCupboard cupboard = judge.stand().cupboard();
      List<StandingPost> posts = new ArrayList<>();
      for (PostGroup group : stacking.posts()) {
        for (int i = 0; i < group.at().size(); i++) {
          Point at = group.at().get(i);
          List<String> ids = new ArrayList<>();
          for (int kind : group.makings().get(i)) {
            ids.add(cupboard.id(kind));
          }
          posts.add(
              new StandingPost(at, new Length(group.base()), ids, carried(layers, at, group, i)));
        }
      }
      return posts;
    }

    /** The layers whose undersides lie on a post: of the columns with a post there, at its top. */
    private List<String> carried(List<Layer> layers, Point at, PostGroup group, int index) {
      long top = group.base() + height(group.makings().get(index));
      List<String> carried = new ArrayList<>();
      for (int i = 0; i < layers.size(); i++) {
        Layer layer = layers.get(i);
        Spot spot = spots.get(i);
        Shelf shelf = judge.stand().request().studio().shelf(layer.shelfId()).orElseThrow();
        long underside = layer.z().minus(shelf.thickness()).micrometres();
        if (underside == top
            && spot.owner().posts().contains(at)
            && PostUnderShelf.touches(judge.stand(), spot, at)) {
          carried.add(layer.id());
        }
      }
      return carried;
    }

    private long height(int[] making) {
      long height = 0;
      for (int kind : making) {
        height += judge.stand().request().studio().posts().get(kind).length().micrometres();
      }
      return height;
    }
  }
}
