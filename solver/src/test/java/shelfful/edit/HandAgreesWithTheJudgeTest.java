package shelfful.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Gap;
import shelfful.geometry.Oval;
import shelfful.geometry.Pose;
import shelfful.geometry.Shape;
import shelfful.inspect.Finding;
import shelfful.inspect.Inspector;
import shelfful.inspect.PlaceFigure;
import shelfful.inspect.Rule;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.ware.Catcher;
import shelfful.ware.Form;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * What is told of a piece in the hand, against the judge's word on the whole load with the piece
 * set down there, and against the planner's geometry, which shares no code with either.
 */
class HandAgreesWithTheJudgeTest {
  private static final Set<Rule> BY_DISTANCE =
      Set.of(
          Rule.PIECES_TOO_CLOSE,
          Rule.PIECE_TOO_CLOSE_TO_POST,
          Rule.PIECE_TOO_CLOSE_TO_WALL,
          Rule.PIECE_TOO_CLOSE_TO_KEEP_OUT,
          Rule.PIECE_HITS_SHELF,
          Rule.PIECE_TALLER_THAN_HEADROOM_ALLOWS,
          Rule.PIECE_TOO_CLOSE_TO_LID,
          Rule.FOOT_OVER_EDGE,
          Rule.BODY_OVER_EDGE);

  private final Inspector inspector = new Inspector();
  private final SplittableRandom chance = new SplittableRandom(20261125);

  /** A random piece of a random load, held over some place near its own. */
  private record Scene(Load load, Layer layer, Hand hand, Tentative held) {
    static Scene of(SplittableRandom chance) {
      Load load = WorkPlans.one(WorkPlans.loads(), chance);
      List<Layer> filled = load.layers().stream().filter(l -> !l.placements().isEmpty()).toList();
      Layer layer = WorkPlans.one(filled, chance);
      Placement piece = WorkPlans.one(layer.placements(), chance);
      Placement nudged = WorkPlans.nudged(piece, 60, chance);
      Hand hand = Hand.of(WorkPlan.of(load), piece.pieceId()).orElseThrow();
      return new Scene(load, layer, hand, hand.at(layer.id(), nudged.at(), nudged.turn()));
    }

    String pieceId() {
      return held.place().pieceId();
    }

    Load setDown() {
      return Placing.put(load, layer.id(), held.place());
    }
  }

  @Test
  void forbidsExactlyWhatTheJudgeForbids() {
    int forbidden = 0;
    for (int i = 0; i < 600; i++) {
      Scene scene = Scene.of(chance);
      Set<String> told = new HashSet<>();
      for (PlaceFigure fault : scene.held().faults()) {
        told.add(key(fault.rule().id(), fault.rule() == Rule.PIECES_TOO_CLOSE, fault.other()));
      }
      assertThat(told).as(scene.held().toString()).isEqualTo(judged(scene));
      forbidden += told.isEmpty() ? 0 : 1;
    }
    assertThat(forbidden).isBetween(100, 590);
  }

  private Set<String> judged(Scene scene) {
    Set<String> judged = new HashSet<>();
    for (Finding finding : inspector.judge(scene.setDown()).orElseThrow().faults()) {
      boolean byDistance = BY_DISTANCE.stream().anyMatch(one -> one.id().equals(finding.rule()));
      if (byDistance && finding.pieceIds().contains(scene.pieceId())) {
        String other =
            finding.pieceIds().stream()
                .filter(id -> !id.equals(scene.pieceId()))
                .findFirst()
                .orElse("");
        judged.add(key(finding.rule(), !other.isEmpty(), other));
      }
    }
    return judged;
  }

  private static String key(String rule, boolean pair, String other) {
    return pair ? rule + " " + other : rule;
  }

  @Test
  void theFigureIsTheJudgesFigureOnTheWholeLoad() {
    int compared = 0;
    for (int i = 0; i < 300; i++) {
      Scene scene = Scene.of(chance);
      Load down = scene.setDown();
      for (PlaceFigure figure : scene.held().figures()) {
        if (figure.rule() == Rule.PIECES_TOO_CLOSE) {
          assertThat(inspector.gapBetween(down, scene.pieceId(), figure.other()))
              .contains(figure.measured());
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(300);
  }

  @Test
  void theFigureIsThatOfThePlannersGeometry() {
    int compared = 0;
    for (int i = 0; i < 300; i++) {
      Scene scene = Scene.of(chance);
      Load down = scene.setDown();
      for (PlaceFigure figure : scene.held().figures()) {
        if (figure.rule() == Rule.PIECES_TOO_CLOSE) {
          double gap = gap(down, scene.pieceId(), figure.other());
          // Crossing bars: the judge says only that they overlap by at least so much.
          boolean crossing = figure.measured().millimetres() < gap - 0.05 && gap < 0;
          if (!crossing) {
            assertThat(figure.measured().millimetres()).isCloseTo(gap, within(0.002));
          }
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(300);
  }

  @Test
  void theLineIsAsLongAsTheFigureAndMovingAwayAlongItWidensTheGap() {
    int walked = 0;
    for (int i = 0; i < 300; i++) {
      Scene scene = Scene.of(chance);
      for (PlaceFigure figure : scene.held().figures()) {
        if (!figure.isInThePlan() || figure.measured().micrometres() < 0) {
          continue;
        }
        PlaceFigure.Line line = figure.line();
        double length =
            Math.hypot(
                line.to().x().minus(line.from().x()).millimetres(),
                line.to().y().minus(line.from().y()).millimetres());
        assertThat(length).isCloseTo(figure.measured().millimetres(), within(0.01));
        walked += widens(scene, figure) ? 1 : 0;
      }
    }
    assertThat(walked).isGreaterThan(500);
  }

  /** A tenth of a millimetre along the line changes the distance by as much, to a hundredth. */
  private static boolean widens(Scene scene, PlaceFigure figure) {
    Placement place = scene.held().place();
    Placement away =
        new Placement(
            place.pieceId(),
            shapePoint(place, figure.line().awayX() * 0.1, figure.line().awayY() * 0.1),
            place.turn(),
            place.onCatcher());
    return scene.hand().at(scene.layer().id(), away.at(), away.turn()).figures().stream()
        .filter(one -> one.rule() == figure.rule() && one.other().equals(figure.other()))
        .findFirst()
        .map(
            one -> {
              assertThat(one.measured().minus(figure.measured()).millimetres())
                  .as(figure.toString())
                  .isCloseTo(0.1, within(0.01));
              return true;
            })
        .orElse(false);
  }

  private static shelfful.measure.Point shapePoint(Placement place, double x, double y) {
    return new shelfful.measure.Point(
        place.at().x().plus(shelfful.measure.Length.ofMillimetres(x)),
        place.at().y().plus(shelfful.measure.Length.ofMillimetres(y)));
  }

  private static double gap(Load load, String one, String other) {
    double least = Double.POSITIVE_INFINITY;
    StandingWare a = ware(load, one);
    StandingWare b = ware(load, other);
    for (Part mine : parts(load, one, a)) {
      for (Part theirs : parts(load, other, b)) {
        if (mine.from() < theirs.to() && theirs.from() < mine.to()) {
          least =
              Math.min(
                  least, Gap.between(mine.shape(), mine.pose(), theirs.shape(), theirs.pose()));
        }
      }
    }
    return least;
  }

  private record Part(Shape shape, Pose pose, double from, double to) {}

  private static List<Part> parts(Load load, String pieceId, StandingWare ware) {
    WorkPlan plan = WorkPlan.of(load);
    Placement place = plan.placement(pieceId).orElseThrow();
    double z = plan.layerOf(pieceId).orElseThrow().z().millimetres();
    Pose pose =
        new Pose(
            place.at().x().millimetres(), place.at().y().millimetres(), place.turn().radians());
    List<Part> parts = new java.util.ArrayList<>();
    ware.bands()
        .forEach(
            band ->
                parts.add(
                    new Part(
                        shape(band.outline()),
                        pose,
                        z + band.from().millimetres(),
                        z + band.to().millimetres())));
    ware.lugs()
        .forEach(
            lug -> {
              double radius = lug.width().millimetres() / 2;
              double length = lug.reach().millimetres() - radius;
              double angle = lug.direction().radians();
              Shape bar =
                  new Capsule(0, 0, length * Math.cos(angle), length * Math.sin(angle), radius);
              parts.add(
                  new Part(bar, pose, z + lug.from().millimetres(), z + lug.to().millimetres()));
            });
    return parts;
  }

  private static Shape shape(Outline outline) {
    return outline instanceof Outline.Round round
        ? new Disc(0, 0, round.diameter().millimetres() / 2)
        : new Oval(0, 0, outline.width().millimetres() / 2, outline.depth().millimetres() / 2, 0);
  }

  private static StandingWare ware(Load load, String pieceId) {
    LoadRequest request = load.request();
    Piece piece =
        request.pieces().stream().filter(p -> p.id().equals(pieceId)).findFirst().orElseThrow();
    Form form = request.studio().form(piece.batch().formId()).orElseThrow();
    boolean onCatcher = WorkPlan.of(load).placement(pieceId).orElseThrow().onCatcher();
    java.util.Optional<Catcher> catcher =
        onCatcher
            ? java.util.Optional.of(request.studio().rules().catcher())
            : java.util.Optional.empty();
    return StandingWare.of(form, piece.part(), request.firing().kind().goesIn(), catcher);
  }
}
