package shelfful.ui.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.app.KeepAStudio;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Mass;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;
import shelfful.ware.BisqueSetting;

/** How a form is set in a bisque firing, on its page. */
class BisqueGroupsTest {
  private final Studio demo = DemoStudio.studio();
  private final int bottle =
      IntStream.range(0, demo.forms().size())
          .filter(i -> demo.forms().get(i).bisque().isAlone())
          .findFirst()
          .orElseThrow();
  private final StudioViewModel model =
      new StudioViewModel(
          new Manner(Words.english(), LengthUnit.MILLIMETRES, NumberStyle.DOT), demo, new Steps());

  @BeforeEach
  void chooseAFormThatStandsAlone() {
    model.choose(bottle);
  }

  private Field field(String label) {
    return model.page().get().stream()
        .flatMap(group -> group.fields().stream())
        .filter(field -> field.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private void take(String label) {
    model.take(
        model.page().get().stream()
            .flatMap(group -> group.steps().stream())
            .filter(step -> step.label().equals(label))
            .findFirst()
            .orElseThrow());
  }

  private BisqueSetting setting() {
    return model.studio().get().forms().get(bottle).bisque();
  }

  @Test
  void pilesAndPairsAreAllowedAndTakenBack() {
    take("Allow piles");
    assertThat(model.commit(field("Pieces in a pile, at most"), "4")).isEmpty();
    assertThat(model.commit(field("Each further piece adds"), "12.5")).isEmpty();
    assertThat(model.commit(field("One piece carries up to"), "2 kg")).isEmpty();
    assertThat(setting().piled().orElseThrow().mostHigh()).isEqualTo(4);
    assertThat(setting().piled().orElseThrow().increment()).isEqualTo(new Length(12_500));
    assertThat(setting().carries()).contains(Mass.ofKilograms(2));
    assertThat(model.commit(field("In pairs rim to rim"), "true")).isEmpty();
    assertThat(KeepAStudio.judge(model.studio().get()).sound()).isTrue();
    take("No piles");
    assertThat(setting().carries()).contains(Mass.ofKilograms(2));
    assertThat(model.commit(field("In pairs rim to rim"), "false")).isEmpty();
    assertThat(setting()).isEqualTo(BisqueSetting.ALONE);
  }

  @Test
  void aHollowTakesTheFormsThatAreTickedAndAtLeastOne() {
    take("Allow small forms inside");
    String first = demo.forms().get(0).name();
    String second = demo.forms().get(1).name();
    assertThat(model.commit(field("Takes " + second), "true")).isEmpty();
    assertThat(model.commit(field("Takes " + first), "false")).isEmpty();
    assertThat(setting().hollow().orElseThrow().formIds())
        .containsExactly(demo.forms().get(1).id());
    assertThat(model.commit(field("Takes " + second), "false"))
        .hasValueSatisfying(said -> assertThat(said).contains("at least one form"));
    take("Nothing inside");
    assertThat(setting()).isEqualTo(BisqueSetting.ALONE);
  }

  @Test
  void aPileThatGrowsByMoreThanTheFormIsRefused() {
    take("Allow piles");
    assertThat(model.commit(field("Each further piece adds"), "2000")).isPresent();
    assertThat(KeepAStudio.judge(model.studio().get()).sound()).isTrue();
  }

  @Test
  void aNewShortNameIsFollowedByTheHollowsThatTakeTheForm() {
    int cup =
        IntStream.range(0, demo.forms().size())
            .filter(i -> demo.forms().get(i).id().equals("egg-cup"))
            .findFirst()
            .orElseThrow();
    model.choose(cup);
    assertThat(model.commit(field("Short name in lists"), "ec")).isEmpty();
    assertThat(model.studio().get().forms())
        .noneMatch(
            form -> form.bisque().hollow().stream().anyMatch(h -> h.formIds().contains("egg-cup")));
    assertThat(model.studio().get().forms())
        .anyMatch(
            form -> form.bisque().hollow().stream().anyMatch(h -> h.formIds().contains("ec")));
  }
}
