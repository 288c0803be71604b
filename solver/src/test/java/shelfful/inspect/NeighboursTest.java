package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shelfful.fixture.Loads;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Length;

class NeighboursTest {
  @TestFactory
  Stream<DynamicTest> theLeastGapOfALayerIsTheOneTheJudgeTells() {
    return Loads.all().entrySet().stream()
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> assertAgrees(entry.getValue().get())));
  }

  private static void assertAgrees(Load load) {
    JudgedLoad judged = new Inspector().judge(load).orElseThrow();
    Neighbours neighbours = Neighbours.of(load);
    for (LayerFigures figures : judged.figures()) {
      Layer layer = load.layer(figures.layerId()).orElseThrow();
      List<String> ids = layer.placements().stream().map(Placement::pieceId).toList();
      Optional<Length> least =
          ids.stream()
              .flatMap(id -> neighbours.of(id).stream())
              .map(Neighbours.Nearest::gap)
              .min(Length::compareTo);
      assertThat(least).as(layer.id()).isEqualTo(figures.smallestGap());
      for (String id : ids) {
        assertIsNoFartherThanFromTheOther(neighbours, ids, id);
      }
    }
  }

  /** What is nearest to a piece has that piece, or one nearer still, for its own nearest. */
  private static void assertIsNoFartherThanFromTheOther(
      Neighbours neighbours, List<String> ids, String id) {
    Optional<Neighbours.Nearest> nearest = neighbours.of(id);
    if (nearest.isPresent()) {
      assertThat(ids).contains(nearest.get().pieceId());
      assertThat(nearest.get().pieceId()).isNotEqualTo(id);
      assertThat(neighbours.of(nearest.get().pieceId()).orElseThrow().gap())
          .isLessThanOrEqualTo(nearest.get().gap());
    }
  }
}
