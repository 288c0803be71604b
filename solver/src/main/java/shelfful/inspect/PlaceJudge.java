package shelfful.inspect;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.StandingPiece.MadePiece;
import shelfful.load.Load;
import shelfful.load.Pile;
import shelfful.load.Placement;
import shelfful.load.Rest;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Catcher;
import shelfful.ware.StandingWare;

/**
 * The judge's figures of one piece of a load, with all of the pile it is in, at places where it
 * does not stand yet, for moving it by hand: read by the same measures as the rules themselves, so
 * that what is told while a piece is moved is what the judge says afterwards. Rules that are not
 * about a distance (mass, zones, sets) are left to {@link Inspector#judge}.
 */
public final class PlaceJudge {
  /** Things farther away than this beyond what is required are of no interest; micrometres. */
  static final long NEAR = 60_000;

  private final Setting setting;
  private final List<Held> held;
  private final List<StandingPiece> others;

  /** A piece of what is held, and how it lies in it. */
  private record Held(MadePiece made, Rest rest) {}

  private PlaceJudge(Setting setting, List<Held> held) {
    this.setting = setting;
    this.held = held;
    Set<String> ids = held.stream().map(one -> one.made().piece().id()).collect(toSet());
    this.others = setting.pieces().stream().filter(piece -> !ids.contains(piece.id())).toList();
  }

  /**
   * Makes ready for a piece of the list, wherever it stands or waits; empty when the list has no
   * such piece or the load's figures are beyond reason. The load may break rules.
   */
  public static Optional<PlaceJudge> of(Load load, String pieceId) {
    Findings findings = new Findings();
    FigureCheck.judge(load, findings);
    if (findings.isBroken()) {
      return Optional.empty();
    }
    Setting setting = SettingReader.read(load, findings);
    return Optional.ofNullable(setting.list().get(pieceId))
        .map(made -> new PlaceJudge(setting, held(setting, made)));
  }

  private static List<Held> held(Setting setting, MadePiece made) {
    return setting.load().layers().stream()
        .flatMap(layer -> Pile.of(layer.placements()).stream())
        .filter(pile -> pile.holds(made.piece().id()))
        .findFirst()
        .map(pile -> held(setting, pile))
        .orElse(List.of(new Held(made, Rest.ON_SHELF)));
  }

  private static List<Held> held(Setting setting, Pile pile) {
    return pile.pieces().stream()
        .filter(one -> setting.list().containsKey(one.pieceId()))
        .map(one -> new Held(setting.list().get(one.pieceId()), one.rest()))
        .toList();
  }

  /** Whether the piece has to stand on a catcher in this firing. */
  public boolean needsCatcher() {
    MadePiece made = held.get(0).made();
    return CatcherCheck.needs(made.glaze(), made.form());
  }

  /** Whether the piece, or any of its pile, is not the same from every side. */
  public boolean mayTurn() {
    return held.stream()
        .map(one -> ware(one.made(), false))
        .anyMatch(
            ware ->
                !ware.lugs().isEmpty()
                    || ware.bands().stream()
                        .anyMatch(band -> !band.outline().width().equals(band.outline().depth())));
  }

  /**
   * Every distance that matters at a place on a layer: all that fall short, and all others within
   * 60 mm of falling short. Empty when the load has no such layer.
   */
  public List<PlaceFigure> figures(String layerId, Placement place) {
    return shelf(layerId).map(laid -> figures(standing(laid, place))).orElse(List.of());
  }

  private Optional<LaidShelf> shelf(String layerId) {
    return setting.shelves().stream().filter(one -> one.id().equals(layerId)).findFirst();
  }

  /** Whether the piece keeps all its distances at a place; quicker than all the figures. */
  public boolean mayStand(String layerId, Placement place) {
    Optional<LaidShelf> shelf = shelf(layerId);
    if (shelf.isEmpty()) {
      return false;
    }
    List<StandingPiece> pieces = standing(shelf.get(), place);
    StandingPiece body = StandingPiece.pile(pieces);
    List<PlaceFigure> figures = new ArrayList<>();
    new PlaceEdges(setting, body).add(figures);
    if (holds(figures)) {
      new PlaceNeighbours(setting, body).add(others, figures);
    }
    if (holds(figures)) {
      heights(pieces, figures);
    }
    return holds(figures);
  }

  private static boolean holds(List<PlaceFigure> figures) {
    return figures.stream().allMatch(PlaceFigure::holds);
  }

  private List<StandingPiece> standing(LaidShelf shelf, Placement place) {
    List<StandingPiece> pieces = new ArrayList<>();
    for (Held one : held) {
      String id = one.made().piece().id();
      Placement own = new Placement(id, place.at(), place.turn(), place.onCatcher(), one.rest());
      pieces.add(StandingPiece.of(one.made(), own, shelf, ware(one.made(), place.onCatcher())));
    }
    return pieces;
  }

  private StandingWare ware(MadePiece made, boolean onCatcher) {
    Optional<Catcher> catcher =
        onCatcher ? Optional.of(setting.rules().catcher()) : Optional.empty();
    return StandingWare.of(
        made.form(), made.piece().part(), setting.firing().kind().goesIn(), catcher);
  }

  private List<PlaceFigure> figures(List<StandingPiece> pieces) {
    StandingPiece body = StandingPiece.pile(pieces);
    List<PlaceFigure> figures = new ArrayList<>();
    new PlaceNeighbours(setting, body).add(others, figures);
    new PlaceEdges(setting, body).add(figures);
    heights(pieces, figures);
    return List.copyOf(figures);
  }

  private void heights(List<StandingPiece> pieces, List<PlaceFigure> figures) {
    Carriers carriers = Carriers.of(pieces);
    for (StandingPiece piece : pieces) {
      new PlaceHeights(setting, piece, carriers.heightTolerance(piece)).add(figures);
    }
  }

  /** A figure in the plan. */
  static PlaceFigure figure(Rule rule, String other, Approach approach, long required) {
    return new PlaceFigure(
        rule,
        other,
        new Length(approach.distance().whole()),
        new Length(required),
        approach.distance().reaches(required),
        new PlaceFigure.Line(
            point(approach.from()),
            point(approach.to()),
            approach.away().x(),
            approach.away().y()));
  }

  static Point point(Vector vector) {
    return new Point(new Length(Math.round(vector.x())), new Length(Math.round(vector.y())));
  }
}
