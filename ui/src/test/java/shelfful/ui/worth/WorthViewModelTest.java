package shelfful.ui.worth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.purchase.Gain;
import shelfful.purchase.Purchase;
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

  private static Worth worth(String what, double gain) {
    return new Worth(
        new Purchase(what, DemoStudio.studio()),
        6,
        new Gain(gain, gain, gain, 1, 2),
        OptionalDouble.empty());
  }

  @Test
  void theMostWorthComesFirstInWhateverOrderItIsMeasured() {
    List<Worth> shown = List.of();
    for (Worth next :
        List.of(worth("post", 0.5), worth("shelf", 3), worth("half", -1), worth("a post", 0.5))) {
      shown = WorthViewModel.among(shown, next);
    }
    assertThat(shown)
        .extracting(one -> one.purchase().words())
        .containsExactly("shelf", "a post", "post", "half");
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
