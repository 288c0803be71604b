package shelfful.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.app.UsualFiring;
import shelfful.files.BatchListReader;
import shelfful.files.StudioReader;
import shelfful.inspect.InspectedLoad;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;

/** What waits in the demo lists, explained; the larger ones only in the slow run. */
class DemoRemediesTest {
  private static final Path DEMO = Path.of("../demo-data");

  private static InspectedLoad planned(String list, String kilnId, long steps) {
    Studio studio = StudioReader.read(DEMO.resolve("studio.json")).found().orElseThrow();
    List<Batch> batches = BatchListReader.read(DEMO.resolve(list), studio).found().orElseThrow();
    Kiln kiln = studio.kiln(kilnId).orElseThrow();
    Firing firing = UsualFiring.of(studio, batches, kiln, FiringKind.GLAZE).orElseThrow();
    LoadRequest request =
        new LoadRequest(studio, batches, firing, Optional.empty(), Optional.empty(), 1, steps);
    return new PlanALoad(request)
        .run(SearchLength.ofSteps(steps), PlanListener.none())
        .orElseThrow();
  }

  @Test
  void nothingWaitsInALightLoadOrEveryPieceIsExplained() {
    InspectedLoad load = planned("list-60.csv", "round-top", 10);
    List<Explanation> explanations =
        new RemedySearch(load, new RemedyEffort(2, 1, 2, false)).explain(one -> {});
    assertThat(Claims.wrong(load, explanations)).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"list-200.csv round-top", "list-500.csv front"})
  @Tag("slow")
  void everyPieceThatWaitsIsExplained(String name) throws IOException {
    InspectedLoad load = planned(name.split(" ")[0], name.split(" ")[1], 20);
    List<Explanation> explanations =
        new RemedySearch(load, new RemedyEffort(2, 1, 2, false)).explain(one -> {});
    assertThat(load.load().leftOut()).isNotEmpty();
    assertThat(Claims.wrong(load, explanations)).isEmpty();
    assertThat(explanations)
        .allMatch(one -> !one.remedies().isEmpty() || isHotterThanEveryShelf(load, one));
  }

  /** Such ware has no remedy in this studio, and its next firing says so. */
  private static boolean isHotterThanEveryShelf(InspectedLoad load, Explanation one) {
    Studio studio = load.load().request().studio();
    Glaze glaze = studio.glaze(one.group().batch().glazeId().orElseThrow()).orElseThrow();
    return one.trials().stream().anyMatch(trial -> trial.why().startsWith("No shelf"))
        && studio.shelves().stream()
            .allMatch(shelf -> glaze.cone().isHotterThan(shelf.hottest().orElseThrow()));
  }
}
