package shelfful.inspect;

import static shelfful.inspect.Limits.limit;
import static shelfful.inspect.Scenes.chalk;
import static shelfful.inspect.Scenes.mm;
import static shelfful.inspect.Scenes.round;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.Forms;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Studios;
import shelfful.load.Load;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.KeptApart;
import shelfful.ware.Profile;

/**
 * Distances of pieces at, over and under what each rule asks. Every form has a tolerance of 1 mm.
 */
class PieceLimitsTest {
  @TestFactory
  Stream<DynamicTest> gapsBetweenPieces() {
    return Stream.of(
        limit("two beakers", Rule.PIECES_TOO_CLOSE, spare -> beakers(70 + 6.4 + 2 + spare)),
        limit(
            "a glaze with a gap of its own",
            Rule.PIECES_TOO_CLOSE,
            spare -> beakerBesideMoss(70 + 9 + 2 + spare)),
        limit(
            "bisque ware, which may touch",
            Rule.PIECES_TOO_CLOSE,
            spare -> dryBeakers(70 + 2 + spare)),
        limit(
            "a handle and a beaker",
            Rule.PIECES_TOO_CLOSE,
            spare -> two("mug", 0, "beaker", 70 + 35 + 8.4 + spare)),
        limit(
            "two handles",
            Rule.PIECES_TOO_CLOSE,
            spare -> two("mug", 0, "mug", 70 + 70 + 8.4 + spare)),
        limit(
            "the long side of an oval",
            Rule.PIECES_TOO_CLOSE,
            spare -> two("platter", 90, "beaker", 65 + 35 + 8.4 + spare)),
        limit(
            "the end of an oval",
            Rule.PIECES_TOO_CLOSE,
            spare -> two("platter", 0, "beaker", 110 + 35 + 8.4 + spare)),
        limit(
            "two ovals end to end",
            Rule.PIECES_TOO_CLOSE,
            spare -> two("platter", 180, "platter", 110 + 110 + 8.4 + spare)),
        limit(
            "low ware under a flare",
            Rule.PIECES_TOO_CLOSE,
            spare -> dishUnderBowl(35, 40 + 30 + 8.4 + spare)),
        limit(
            "ware that reaches into a flare",
            Rule.PIECES_TOO_CLOSE,
            spare -> dishUnderBowl(35.1, 70 + 30 + 8.4 + spare)));
  }

  private static Load beakers(double apart) {
    return round(chalk("A", "beaker", 2))
        .place("F1", "A-001", -40, 0, 0)
        .place("F1", "A-002", -40 + apart, 0, 0)
        .load();
  }

  private static Load beakerBesideMoss(double apart) {
    return round(chalk("A", "beaker", 1), Batches.glazed("M", "beaker", "moss", 1))
        .place("F1", "A-001", 0, -40, 0)
        .place("F1", "M-001", 0, -40 + apart, 0)
        .load();
  }

  private static Load dryBeakers(double apart) {
    return new LoadDraft(
            Studios.studio(), Firings.bisque("round"), "full", Batches.dry("D", "beaker", 2))
        .level("F", "1in")
        .place("F1", "D-001", 0, 0, 0)
        .place("F1", "D-002", apart, 0, 0)
        .load();
  }

  /** One at the left, the other so far to its right, turned by half a turn. */
  private static Load two(String left, double degrees, String right, double apart) {
    return round(chalk("A", left, 1), chalk("B", right, 1))
        .place("F1", "A-001", -60, 0, degrees)
        .place("F1", "B-001", -60 + apart, 0, 180)
        .load();
  }

  private static Load dishUnderBowl(double height, double apart) {
    Studio studio =
        Scenes.withForm(
            Forms.form(
                "dish",
                Profile.upright(Forms.round(50), Forms.round(60), mm(height), List.of()),
                0.1));
    return round(studio, List.of("4in"), chalk("A", "bowl", 1), chalk("D", "dish", 1))
        .place("F1", "A-001", 0, 0, 0)
        .place("F1", "D-001", apart, 0, 0)
        .load();
  }

  @TestFactory
  Stream<DynamicTest> distancesFromOtherThings() {
    return Stream.of(
        limit(
            "a beaker before a post",
            Rule.PIECE_TOO_CLOSE_TO_POST,
            spare -> beakerAt(0, 230 - 19 - 10 - 35 - 1 - spare)),
        limit(
            "a handle before a post",
            Rule.PIECE_TOO_CLOSE_TO_POST,
            spare -> one("mug", 0, 230 - 19 - 10 - 70 - 1 - spare, 90)),
        limit(
            "an oval before a post",
            Rule.PIECE_TOO_CLOSE_TO_POST,
            spare -> one("platter", 0, 230 - 19 - 10 - 65 - 1 - spare, 0)),
        limit(
            "a round wall",
            Rule.PIECE_TOO_CLOSE_TO_WALL,
            spare -> beakerAt(292 - 25 - 35 - 1 - spare, 0)),
        limit(
            "a handle towards a round wall",
            Rule.PIECE_TOO_CLOSE_TO_WALL,
            spare -> one("mug", -(292 - 25 - 70 - 1 - spare), 0, 180)),
        limit(
            "the edge of a round shelf",
            Rule.FOOT_OVER_EDGE,
            spare -> beakerAt(270 - 5 - 27.5 - 1 - spare, 0)),
        limit(
            "an oval foot across to the edge of a slab",
            Rule.FOOT_OVER_EDGE,
            spare -> onSlab(90, 254 - 5 - 45 - 1 - spare)),
        limit(
            "an oval foot along to the edge of a slab",
            Rule.FOOT_OVER_EDGE,
            spare -> onSlab(0, 254 - 5 - 80 - 1 - spare)),
        limit(
            "a thermocouple",
            Rule.PIECE_TOO_CLOSE_TO_KEEP_OUT,
            spare -> besideThermocouple(-276 + 4 + 25 + 35 + 1 + spare)),
        limit(
            "a foot at the joint of halves",
            Rule.FOOT_OVER_EDGE,
            spare -> atJoint("beaker", -(1.5 + 5 + 27.5 + 1 + spare))),
        limit(
            "a bottle beside the other column's shelf",
            Rule.PIECE_HITS_SHELF,
            spare -> atJoint("bottle", 1.5 - 30 - 1 - spare)),
        limit(
            "a bottle beside a post of the other column",
            Rule.PIECE_TOO_CLOSE_TO_POST,
            spare -> bottleAt(200, 40 - 19 - 10 - 30 - 1 - spare)),
        limit(
            "a bottle and a beaker on layers of two columns",
            Rule.PIECES_TOO_CLOSE,
            spare -> overTheJoint(30 + 35 + 8.4 + spare)),
        limit(
            "a body over its shelf",
            Rule.BODY_OVER_EDGE,
            spare -> bodyOverShelf("beaker", 270 - 35 - 1 - spare)),
        limit(
            "a handle over its shelf",
            Rule.BODY_OVER_EDGE,
            spare -> bodyOverShelf("mug", 270 - 70 - 1 - spare)),
        limit(
            "glazes kept apart in the plan, low ware under a flare",
            Rule.KEPT_APART_TOO_CLOSE,
            spare -> mossDishUnderBowl(20 - spare)),
        limit("glazes kept apart", Rule.KEPT_APART_TOO_CLOSE, spare -> keptApart(40 - spare)));
  }

  private static Load beakerAt(double x, double y) {
    return one("beaker", x, y, 0);
  }

  private static Load one(String formId, double x, double y, double degrees) {
    return round(chalk("A", formId, 1)).place("F1", "A-001", x, y, degrees).load();
  }

  private static Load onSlab(double degrees, double x) {
    return new LoadDraft(Studios.studio(), Firings.glaze("oval"), "full", chalk("A", "platter", 1))
        .level("oval", "1in")
        .place("oval1", "A-001", x, 0, degrees)
        .load();
  }

  /** The beaker reaches from 260.6 to 345.6 mm, the thermocouple from 340 to 350. */
  private static Load besideThermocouple(double x) {
    return round(Studios.studio(), List.of("8in"), chalk("A", "beaker", 1))
        .place("F2", "A-001", x, 0, 0)
        .load();
  }

  /** On the front half, while a back half lies between 245 and 261 mm. */
  private static Load atJoint(String formId, double y) {
    return new LoadDraft(Studios.studio(), Firings.glaze("round"), "halves", chalk("A", formId, 1))
        .level("B", "1in")
        .level("B", "8in")
        .level("V", "2in")
        .place("V1", "A-001", 0, y, 0)
        .load();
  }

  private static Load bottleAt(double x, double y) {
    return halves(chalk("A", "bottle", 1)).place("V1", "A-001", x, y, 0).load();
  }

  /**
   * The beaker stands 159 mm high at the back, the bottle reaches from 66.8 to 326.8 mm at the
   * front.
   */
  private static Load overTheJoint(double apart) {
    return halves(chalk("A", "bottle", 1), chalk("B", "beaker", 1))
        .place("V1", "A-001", 0, -40, 0)
        .place("B2", "B-001", 0, -40 + apart, 0)
        .load();
  }

  private static LoadDraft halves(Batch... batches) {
    return new LoadDraft(Studios.studio(), Firings.glaze("round"), "halves", batches)
        .level("B", "1in")
        .level("B", "4in")
        .level("B", "4in")
        .level("V", "2in");
  }

  private static Load bodyOverShelf(String formId, double x) {
    Studio studio =
        Scenes.withRules(
            old ->
                new HouseRules(
                    old.clearances(),
                    false,
                    old.mostPostPieces(),
                    old.catcher(),
                    old.keptApart(),
                    old.dueSoonDays()));
    return round(studio, List.of("4in"), chalk("A", formId, 1))
        .place("F1", "A-001", x, 0, 0)
        .load();
  }

  /** Two beakers 40 mm apart, both with a tolerance of 1 mm. */
  private static Load keptApart(double distance) {
    KeptApart pair =
        new KeptApart("chalk", "moss", KeptApart.Apartness.BY_DISTANCE, Optional.of(mm(distance)));
    Studio studio =
        Scenes.withRules(
            old ->
                new HouseRules(
                    old.clearances(), true, 2, old.catcher(), List.of(pair), old.dueSoonDays()));
    return round(
            studio,
            List.of("4in"),
            chalk("A", "beaker", 1),
            Batches.glazed("M", "beaker", "moss", 1))
        .place("F1", "A-001", 0, 0, 0)
        .place("F1", "M-001", 70 + 40 + 2, 0, 0)
        .load();
  }

  /** A dish of 35 mm height and a bowl that is wide only above: in the plan 20 mm apart. */
  private static Load mossDishUnderBowl(double distance) {
    KeptApart pair =
        new KeptApart("chalk", "moss", KeptApart.Apartness.BY_DISTANCE, Optional.of(mm(distance)));
    Profile low = Profile.upright(Forms.round(50), Forms.round(60), mm(35), List.of());
    Studio plain = Scenes.withForm(Forms.form("dish", low, 0.1));
    HouseRules old = plain.rules();
    HouseRules rules =
        new HouseRules(old.clearances(), true, 2, old.catcher(), List.of(pair), old.dueSoonDays());
    Studio studio =
        new Studio(
            plain.name(),
            plain.unit(),
            plain.forms(),
            plain.glazes(),
            plain.kilns(),
            plain.shelves(),
            plain.posts(),
            rules);
    return round(
            studio, List.of("4in"), chalk("A", "bowl", 1), Batches.glazed("D", "dish", "moss", 1))
        .place("F1", "A-001", 0, 0, 0)
        .place("F1", "D-001", 70 + 30 + 20 + 2, 0, 0)
        .load();
  }
}
