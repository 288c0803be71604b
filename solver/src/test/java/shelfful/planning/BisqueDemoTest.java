package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.files.BatchListReader;
import shelfful.files.StudioReader;
import shelfful.fixture.BisqueWays;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Pile;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.BisqueSetting;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;

/** The demo's bone-dry ware, piled and set like glaze ware, in one kiln. */
class BisqueDemoTest {
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final long STEPS = 60;

  private static LoadRequest request(Studio studio) {
    List<Batch> batches =
        BatchListReader.read(DEMO.resolve("bisque-list.csv"), studio).found().orElseThrow();
    Firing firing =
        new Firing("round-top", FiringKind.BISQUE, new Cone("04"), 0, Atmosphere.OXIDATION);
    return new LoadRequest(
        studio, batches, firing, Optional.of("full"), Optional.empty(), 1, STEPS);
  }

  private static Load plan(Studio studio) {
    Load load = new LoadPlanner(request(studio)).plan(SearchBudget.ofSteps(STEPS), better -> {});
    assertThat(new Inspector().inspect(load)).isInstanceOf(Inspection.Passed.class);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    return load;
  }

  /** Nothing rests on anything, and the gap is that of glazed ware; sizes are the same. */
  private static Studio likeGlazeWare(Studio studio) {
    List<Form> alone =
        studio.forms().stream().map(form -> BisqueWays.with(form, BisqueSetting.ALONE)).toList();
    Studio plain = BisqueWays.with(studio, alone);
    Clearances old = plain.rules().clearances();
    Length gap = old.glazedToGlazed();
    Clearances apart =
        new Clearances(
            gap,
            gap,
            old.wareToPost(),
            old.wareToWall(),
            old.wareToKeepOut(),
            old.footToShelfEdge(),
            old.headroom(),
            old.underLid(),
            old.offFloor(),
            old.leastShelfToShelf());
    HouseRules rules = plain.rules();
    return new Studio(
        plain.name(),
        plain.unit(),
        plain.forms(),
        plain.glazes(),
        plain.kilns(),
        plain.shelves(),
        plain.posts(),
        new HouseRules(
            apart,
            rules.bellyMayPassEdge(),
            rules.mostPostPieces(),
            rules.catcher(),
            rules.keptApart(),
            rules.dueSoonDays()));
  }

  @Test
  void holdsAtLeastSixtyPercentMoreThanSetLikeGlazeWare() {
    Studio studio = StudioReader.read(DEMO.resolve("studio.json")).found().orElseThrow();
    Load piled = plan(studio);
    Load apart = plan(likeGlazeWare(studio));
    assertThat(piled.leftOut()).isNotEmpty();
    assertThat(piled.placed()).isGreaterThanOrEqualTo((int) Math.ceil(1.6 * apart.placed()));
    assertThat(piled.layers().stream().flatMap(layer -> Pile.of(layer.placements()).stream()))
        .anyMatch(pile -> pile.size() > 1);
  }
}
