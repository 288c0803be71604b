package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.inspect.StandingPiece.MadePiece;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Catcher;
import shelfful.ware.StandingWare;

/**
 * The judge's figures of one piece of a load at places where it does not stand yet, for moving it
 * by hand: read by the same measures as the rules themselves, so that what is told while a piece is
 * moved is what the judge says afterwards. Rules that are not about a distance (mass, zones, sets)
 * are left to {@link Inspector#judge}.
 */
public final class PlaceJudge {
  /** Things farther away than this beyond what is required are of no interest; micrometres. */
  static final long NEAR = 60_000;

  private final Setting setting;
  private final MadePiece made;
  private final List<StandingPiece> others;

  private PlaceJudge(Setting setting, MadePiece made) {
    this.setting = setting;
    this.made = made;
    this.others =
        setting.pieces().stream().filter(piece -> !piece.id().equals(made.piece().id())).toList();
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
        .map(made -> new PlaceJudge(setting, made));
  }

  /** Whether the piece has to stand on a catcher in this firing. */
  public boolean needsCatcher() {
    return CatcherCheck.needs(made.glaze(), made.form());
  }

  /** Whether the piece is not the same from every side. */
  public boolean mayTurn() {
    StandingWare ware = ware(false);
    return !ware.lugs().isEmpty()
        || ware.bands().stream()
            .anyMatch(band -> !band.outline().width().equals(band.outline().depth()));
  }

  /**
   * Every distance that matters at a place on a layer: all that fall short, and all others within
   * 60 mm of falling short. Empty when the load has no such layer.
   */
  public List<PlaceFigure> figures(String layerId, Placement place) {
    Optional<LaidShelf> shelf =
        setting.shelves().stream().filter(one -> one.id().equals(layerId)).findFirst();
    return shelf.map(laid -> figures(standing(laid, place))).orElse(List.of());
  }

  /** Whether the piece keeps all its distances at a place; quicker than all the figures. */
  public boolean mayStand(String layerId, Placement place) {
    Optional<LaidShelf> shelf =
        setting.shelves().stream().filter(one -> one.id().equals(layerId)).findFirst();
    if (shelf.isEmpty()) {
      return false;
    }
    StandingPiece piece = standing(shelf.get(), place);
    List<PlaceFigure> figures = new ArrayList<>();
    new PlaceEdges(setting, piece).add(figures);
    if (holds(figures)) {
      new PlaceNeighbours(setting, piece).add(others, figures);
    }
    if (holds(figures)) {
      new PlaceHeights(setting, piece).add(figures);
    }
    return holds(figures);
  }

  private static boolean holds(List<PlaceFigure> figures) {
    return figures.stream().allMatch(PlaceFigure::holds);
  }

  private StandingPiece standing(LaidShelf shelf, Placement place) {
    return StandingPiece.of(made, place, shelf, ware(place.onCatcher()));
  }

  private StandingWare ware(boolean onCatcher) {
    Optional<Catcher> catcher =
        onCatcher ? Optional.of(setting.rules().catcher()) : Optional.empty();
    return StandingWare.of(
        made.form(), made.piece().part(), setting.firing().kind().goesIn(), catcher);
  }

  private List<PlaceFigure> figures(StandingPiece piece) {
    List<PlaceFigure> figures = new ArrayList<>();
    new PlaceNeighbours(setting, piece).add(others, figures);
    new PlaceEdges(setting, piece).add(figures);
    new PlaceHeights(setting, piece).add(figures);
    return List.copyOf(figures);
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
