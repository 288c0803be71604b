package shelfful.ui.worth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.beans.InvalidationListener;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.purchase.Worth;
import shelfful.ui.DemoStudio;
import shelfful.ui.SmallPlan;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class WorthViewModelTest {
  private final WorthViewModel model =
      new WorthViewModel(
          Words.english(),
          new SameThreadTaskRunner(),
          DemoStudio::studio,
          () -> LocalDate.of(2026, 6, 1));

  @TempDir private Path folder;

  @Test
  void nothingIsWorthBuyingWhereEverythingGoesInAlready() {
    model.add("roomy", SmallPlan.roomy());
    model.measure(new Wishes("8 mm", "12", "25", Thoroughness.QUICK));
    assertThat(model.measuring().get()).isFalse();
    assertThat(model.worths()).isNotEmpty();
    assertThat(model.worths()).noneMatch(worth -> worth.gain().isClear());
    assertThat(model.told().get()).contains("with a clear gain: 0").contains("6.0 pieces");
    assertThat(model.method().get()).contains("2 seeds").contains("10 steps");
  }

  @Test
  void theMostWorthComesFirst() {
    List<Worth> asTheyCame = new ArrayList<>();
    model
        .worths()
        .addListener(
            (InvalidationListener)
                changed ->
                    model.worths().stream()
                        .filter(worth -> !asTheyCame.contains(worth))
                        .forEach(asTheyCame::add));
    model.add("more vases than go in", SmallPlan.load().load().request());
    model.measure(new Wishes("", "", "", Thoroughness.QUICK));
    List<Double> gains = model.worths().stream().map(worth -> worth.gain().mean()).toList();
    assertThat(gains).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(gains).as("there is an order to keep").doesNotHaveDuplicates();
    assertThat(asTheyCame).containsExactlyInAnyOrderElementsOf(model.worths());
    assertThat(asTheyCame).as("it is not the one they came in").isNotEqualTo(model.worths());
  }

  @Test
  void theMethodSaysHowManyListsItRestsOn() {
    model.add("roomy", SmallPlan.roomy());
    model.measure(new Wishes("", "", "", Thoroughness.QUICK));
    assertThat(model.method().get()).contains("the list is planned");
    model.add("roomy again", SmallPlan.roomy());
    model.measure(new Wishes("", "", "", Thoroughness.QUICK));
    assertThat(model.method().get()).contains("each of 2 lists is planned");
  }

  @Test
  void whatCannotBeReadIsToldAndMeasuresNothing() throws IOException {
    model.measure(Wishes.NONE);
    assertThat(model.worths()).isEmpty();
    Path file = Files.writeString(folder.resolve("bad.csv"), "form,quantity\nno-such-form,3\n");
    model.add(file);
    assertThat(model.lists()).isEmpty();
    assertThat(model.told().get()).contains("no-such-form");
    model.add("roomy", SmallPlan.roomy());
    model.measure(new Wishes("thin", "", "", Thoroughness.QUICK));
    assertThat(model.told().get()).contains("\"thin\" is no thickness");
    model.measure(new Wishes("", "12", "", Thoroughness.QUICK));
    assertThat(model.told().get()).contains("go together");
    assertThat(model.worths()).isEmpty();
  }

  @Test
  void aListOfTheStudioIsAddedFromItsFileAndTakenOffAgain() {
    model.add(Path.of("..", "demo-data", "list-60.csv"));
    assertThat(model.lists()).hasSize(1);
    assertThat(model.lists().get(0).name()).isEqualTo("list-60.csv");
    model.remove(0);
    assertThat(model.lists()).isEmpty();
  }
}
