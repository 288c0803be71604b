package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Batches;
import shelfful.fixture.Firings;
import shelfful.fixture.LoadDraft;
import shelfful.fixture.Loads;
import shelfful.fixture.Studios;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;

/** Loads that make no sense are judged like any other. */
class NonsenseTest {
  private static final long[] LENGTHS = {
    0,
    1,
    -1,
    50_000,
    -270_000,
    99_999_999,
    -100_000_000,
    100_000_001,
    Long.MAX_VALUE,
    Long.MIN_VALUE,
    Integer.MAX_VALUE
  };

  @Test
  void judgesGarbledLoadsWithFindings() {
    List<Load> fixtures = Loads.all().values().stream().map(Supplier::get).toList();
    Random random = new Random(11);
    int passed = 0;
    for (int i = 0; i < 800; i++) {
      Load load = fixtures.get(random.nextInt(fixtures.size()));
      for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
        load = garbled(load, random);
      }
      passed += new Inspector().inspect(load) instanceof Inspection.Passed ? 1 : 0;
    }
    // Hardly any change is harmless, such as one that puts back what it took.
    assertThat(passed).isLessThan(80);
  }

  private static Load garbled(Load load, Random random) {
    List<Layer> layers = new ArrayList<>(load.layers());
    List<StandingPost> posts = new ArrayList<>(load.posts());
    List<LeftOut> leftOut = new ArrayList<>(load.leftOut());
    if (random.nextInt(3) == 0 && !posts.isEmpty()) {
      int index = random.nextInt(posts.size());
      posts.set(index, post(posts.get(index), random));
    } else if (!layers.isEmpty()) {
      int index = random.nextInt(layers.size());
      layers.set(index, layer(layers.get(index), random));
    }
    if (random.nextInt(10) == 0) {
      layers.clear();
    }
    if (random.nextInt(10) == 0) {
      leftOut.add(new LeftOut("", LeftOut.Reason.NO_ROOM, "", ""));
    }
    String plan = random.nextInt(20) == 0 ? "" : load.columnPlanId();
    return new Load(load.request(), plan, layers, posts, leftOut);
  }

  private static StandingPost post(StandingPost post, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> new StandingPost(point(random), post.base(), post.postIds(), post.carries());
      case 1 -> new StandingPost(post.at(), length(random), post.postIds(), post.carries());
      case 2 -> new StandingPost(post.at(), post.base(), List.of("?", ""), post.carries());
      default -> new StandingPost(post.at(), post.base(), List.of(), List.of("?"));
    };
  }

  private static Layer layer(Layer layer, Random random) {
    List<Placement> placements = new ArrayList<>(layer.placements());
    placements.add(new Placement("?", point(random), new Angle(random.nextInt()), true));
    if (placements.size() > 1) {
      Placement old = placements.get(0);
      placements.set(
          0,
          new Placement(
              old.pieceId(), point(random), new Angle(random.nextInt()), old.onCatcher()));
    }
    int odd = List.of(-1, 0, 1, 7, Integer.MAX_VALUE, Integer.MIN_VALUE).get(random.nextInt(6));
    return switch (random.nextInt(6)) {
      case 0 -> of(layer, "?", layer.level(), layer.place(), layer.z(), placements);
      case 1 -> of(layer, layer.shelfId(), odd, layer.place(), layer.z(), layer.placements());
      case 2 -> of(layer, layer.shelfId(), layer.level(), odd, layer.z(), layer.placements());
      case 3 ->
          of(
              layer,
              layer.shelfId(),
              layer.level(),
              layer.place(),
              length(random),
              layer.placements());
      case 4 -> of(layer, layer.shelfId(), layer.level(), layer.place(), layer.z(), List.of());
      default -> of(layer, layer.shelfId(), layer.level(), layer.place(), layer.z(), placements);
    };
  }

  private static Layer of(
      Layer old, String shelfId, int level, int place, Length z, List<Placement> placements) {
    return new Layer(old.id(), old.columnId(), level, place, shelfId, z, placements);
  }

  private static Point point(Random random) {
    return new Point(length(random), length(random));
  }

  private static Length length(Random random) {
    return new Length(LENGTHS[random.nextInt(LENGTHS.length)]);
  }

  @Test
  void passesALoadInWhichEverythingWaits() {
    Load load =
        new LoadDraft(
                Studios.studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("A", "beaker", "chalk", 3))
            .load();
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
  }

  @Test
  void namesNoMorePairsThanAnyoneReadsWhenAllWareStandsOnOneSpot() {
    LoadDraft draft =
        new LoadDraft(
                Studios.studio(),
                Firings.glaze("round"),
                "full",
                Batches.glazed("A", "platter", "chalk", 1000))
            .level("F", "1in");
    for (int number = 1; number <= 1000; number++) {
      draft.place("F1", "A-%03d".formatted(number), 0, 0, number);
    }
    List<Finding> findings = Limits.findings(draft.load());
    assertThat(findings)
        .filteredOn(finding -> finding.rule().equals(Rule.PIECES_TOO_CLOSE.id()))
        .hasSize(2001);
  }

  @Test
  void saysWhichFigureIsBeyondReason() {
    Load load = Loads.touchingBisque();
    Layer old = load.layers().get(0);
    Layer far = of(old, old.shelfId(), 1, 0, new Length(Long.MAX_VALUE), old.placements());
    List<Layer> layers = List.of(far, load.layers().get(1));
    Load spoiled = new Load(load.request(), "full", layers, load.posts(), load.leftOut());
    List<Finding> findings = Limits.findings(spoiled);
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).rule()).isEqualTo(Rule.FIGURE_BEYOND_REASON.id());
    assertThat(findings.get(0).sentence()).contains("layer F1");
  }
}
