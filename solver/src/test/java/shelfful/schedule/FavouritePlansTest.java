package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;

class FavouritePlansTest {
  private static final KilnProgram BISQUE = new KilnProgram(0, 0, "K1", Weeks.bisque());
  private static final KilnProgram GLAZE = new KilnProgram(1, 0, "K1", Weeks.glaze());

  private final FavouritePlans plans = new FavouritePlans();

  private void tried(double full, double halves) {
    plans.tried(GLAZE, Map.of("full", full, "halves", halves));
  }

  @Test
  void allAreTriedUntilEnoughIsKnown() {
    assertThat(plans.plan(GLAZE)).isEmpty();
    tried(1, 0.9);
    assertThat(plans.plan(GLAZE)).isEmpty();
    tried(1, 0.9);
    assertThat(plans.plan(GLAZE)).contains("full");
  }

  @Test
  void theOneThatDidBestIsTriedAndAllOfThemEverySoManyLoads() {
    tried(1, 0.99);
    tried(0.9, 1);
    tried(1, 0.99);
    List<Optional<String>> asked = new ArrayList<>();
    for (int i = 0; i < 18; i++) {
      asked.add(plans.plan(GLAZE));
    }
    assertThat(asked).containsOnly(Optional.of("halves"), Optional.empty());
    assertThat(asked.stream().filter(Optional::isEmpty).count()).isEqualTo(3);
  }

  @Test
  void whatDoesBetterFromNowOnBecomesTheFavourite() {
    for (int i = 0; i < 5; i++) {
      tried(1, 0.9);
    }
    assertThat(plans.plan(GLAZE)).contains("full");
    for (int i = 0; i < 5; i++) {
      tried(0.9, 1);
    }
    assertThat(plans.plan(GLAZE)).contains("halves");
  }

  @Test
  void aTrialOfOneProgramSaysNothingOfAnother() {
    for (int i = 0; i < 3; i++) {
      tried(1, 0.9);
    }
    assertThat(plans.plan(BISQUE)).isEmpty();
  }
}
