package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Weeks;

class FavouritePlansTest {
  private static final KilnProgram BISQUE = new KilnProgram(0, 0, "K1", Weeks.bisque());
  private static final KilnProgram GLAZE = new KilnProgram(1, 0, "K1", Weeks.glaze());

  @Test
  void allAreTriedUntilSomeHaveWon() {
    FavouritePlans plans = new FavouritePlans();
    assertThat(plans.plan(GLAZE)).isEmpty();
    plans.won(GLAZE, "halves");
    assertThat(plans.plan(GLAZE)).isEmpty();
  }

  @Test
  void theOneThatWonMostIsTriedAndAllOfThemEveryFewLoads() {
    FavouritePlans plans = new FavouritePlans();
    plans.won(GLAZE, "full");
    plans.won(GLAZE, "halves");
    plans.won(GLAZE, "halves");
    List<Optional<String>> tried = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      tried.add(plans.plan(GLAZE));
    }
    assertThat(tried).containsOnly(Optional.of("halves"), Optional.empty());
    assertThat(tried.stream().filter(Optional::isEmpty).count()).isEqualTo(2);
  }

  @Test
  void whatWonInOneProgramSaysNothingOfAnother() {
    FavouritePlans plans = new FavouritePlans();
    plans.won(GLAZE, "full");
    plans.won(GLAZE, "full");
    assertThat(plans.plan(GLAZE)).contains("full");
    assertThat(plans.plan(BISQUE)).isEmpty();
  }
}
