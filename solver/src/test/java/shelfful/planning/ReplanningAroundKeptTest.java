package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.fixture.RandomRequest;
import shelfful.load.KeptProblem;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.ware.Batch;

/**
 * Plans requests that nobody thought of, keeps some of what came out, changes the list and plans
 * again: nothing kept may move by a micrometre, and the inspector must pass every load. An ordinary
 * build tries forty; a thousand are tried by
 *
 * <pre>mvn -pl solver test -DskippedTags= -Dtest=ReplanningAroundKeptTest#manyRandomPlans</pre>
 *
 * <p>with {@code -DargLine="-Dcases=5000 -DfirstCase=1000"} for other numbers.
 */
class ReplanningAroundKeptTest {
  private static final long STEPS = 5;

  static LongStream fewSeeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void nothingKeptMoves(long seed) {
    assertThat(complaints(seed)).as("seed " + seed).isEmpty();
  }

  @Test
  @Tag("slow")
  void manyRandomPlans() {
    assertThat(RandomCases.complaints(ReplanningAroundKeptTest::complaints)).isEmpty();
  }

  private static List<String> complaints(long seed) {
    LoadRequest first = RandomRequest.of(seed);
    Load before = new LoadPlanner(first).plan(SearchBudget.ofSteps(STEPS), load -> {});
    Random random = new Random(seed);
    KeptSetting kept = someOf(before, random);
    LoadRequest again = changed(first, kept, random).keeping(kept);
    LoadPlanner planner = new LoadPlanner(again);
    List<String> complaints = new ArrayList<>();
    for (KeptProblem problem : planner.keptProblems()) {
      complaints.add(problem.toString());
    }
    if (complaints.isEmpty()) {
      try {
        List<Load> shown = new ArrayList<>();
        shown.add(planner.plan(SearchBudget.ofSteps(STEPS), shown::add));
        shown.forEach(load -> judge(load, kept, complaints));
      } catch (RuntimeException broken) {
        complaints.add(broken + " at " + List.of(broken.getStackTrace()).subList(0, 6));
      }
    }
    return complaints;
  }

  /** Whole sets of some pieces, and now and then some layers. */
  private static KeptSetting someOf(Load load, Random random) {
    Set<String> sets = new HashSet<>();
    double share = random.nextDouble();
    Set<String> pieces = new HashSet<>();
    Set<String> placed = new HashSet<>();
    load.layers().forEach(l -> l.placements().forEach(one -> placed.add(one.pieceId())));
    load.request()
        .pieces()
        .forEach(
            piece -> {
              if (random.nextDouble() < share * share) {
                sets.add(piece.setKey());
              }
            });
    load.request().pieces().stream()
        .filter(piece -> placed.contains(piece.id()) && sets.contains(piece.setKey()))
        .forEach(piece -> pieces.add(piece.id()));
    Set<String> layers = new HashSet<>();
    for (Layer layer : load.layers()) {
      if (random.nextInt(4) == 0) {
        layers.add(layer.id());
      }
    }
    return KeptSetting.of(load, pieces, random.nextBoolean() ? layers : Set.of());
  }

  /**
   * With some batches gone of which nothing is kept, another seed, and now and then one batch more.
   */
  private static LoadRequest changed(LoadRequest first, KeptSetting kept, Random random) {
    Set<String> needed = new HashSet<>();
    kept.standing().forEach(pin -> needed.add(batchOf(first, pin.pieceId())));
    needed.remove("");
    Set<String> sets = new HashSet<>();
    first.batches().stream()
        .filter(batch -> needed.contains(batch.id()))
        .forEach(batch -> batch.set().ifPresent(sets::add));
    List<Batch> batches = new ArrayList<>();
    for (Batch batch : first.batches()) {
      boolean ofSet = batch.set().filter(sets::contains).isPresent();
      if (needed.contains(batch.id()) || ofSet || random.nextInt(3) > 0) {
        batches.add(batch);
      }
    }
    if (random.nextBoolean() && !first.batches().isEmpty()) {
      Batch old = first.batches().get(random.nextInt(first.batches().size()));
      batches.add(
          new Batch(
              "NEW",
              old.formId(),
              old.glazeId(),
              1 + random.nextInt(6),
              old.stage(),
              old.cone(),
              false,
              1 + random.nextInt(3),
              old.due(),
              java.util.Optional.empty(),
              java.util.Optional.empty(),
              old.lidPlace()));
    }
    return new LoadRequest(
        first.studio(),
        batches,
        first.firing(),
        first.columnPlanId(),
        first.day(),
        first.seed() + 1,
        first.steps());
  }

  private static String batchOf(LoadRequest request, String pieceId) {
    return request.pieces().stream()
        .filter(piece -> piece.id().equals(pieceId))
        .map(piece -> piece.batch().id())
        .findFirst()
        .orElse("");
  }

  private static void judge(Load load, KeptSetting kept, List<String> complaints) {
    complaints.addAll(RandomCases.wrong(load));
    Set<PinnedPiece> standing = new HashSet<>();
    Set<LockedLayer> layers = new HashSet<>();
    for (Layer layer : load.layers()) {
      layers.add(LockedLayer.of(load, layer));
      for (Placement one : layer.placements()) {
        standing.add(new PinnedPiece(one.pieceId(), LayerPlace.of(layer), one.at(), one.turn()));
      }
    }
    for (PinnedPiece pin : kept.pieces()) {
      if (!standing.contains(pin)) {
        complaints.add("moved: " + pin);
      }
    }
    for (LockedLayer layer : kept.layers()) {
      if (!layers.contains(layer)) {
        complaints.add("changed: " + layer);
      }
    }
  }
}
