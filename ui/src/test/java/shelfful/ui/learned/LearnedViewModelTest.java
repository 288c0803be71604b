package shelfful.ui.learned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import shelfful.app.MadeUpYear;
import shelfful.learning.CellRate;
import shelfful.learning.Flaw;
import shelfful.learning.Verdict;
import shelfful.learning.ZoneSuggestion;
import shelfful.measure.LengthUnit;
import shelfful.record.Ring;
import shelfful.record.UnpackedFiring;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.steps.Steps;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;
import shelfful.ware.Zone;

class LearnedViewModelTest {
  private static final List<UnpackedFiring> YEAR = MadeUpYear.of(DemoStudio.studio());

  private final Words words = Words.english();
  private final Steps steps = new Steps();
  private final StudioViewModel studio =
      new StudioViewModel(
          new Manner(words, LengthUnit.MILLIMETRES, NumberStyle.DOT), DemoStudio.studio(), steps);
  private final SimpleObjectProperty<List<UnpackedFiring>> firings =
      new SimpleObjectProperty<>(YEAR);
  private final LearnedViewModel model =
      new LearnedViewModel(words, new SameThreadTaskRunner(), firings, new OpenStudio(studio));

  private HabitWords said() {
    return new HabitWords(words, new Decimals(NumberStyle.DOT), studio.studio().get());
  }

  @Test
  void thePlantedHotPlaceIsFoundAndItsIntervalHoldsTheRatePlanted() {
    CellRate hot = model.learned().get().at(Zone.TOP, Ring.EDGE).orElseThrow();
    assertThat(hot.verdict()).isEqualTo(Verdict.WORSE);
    // The weak form is one of seventeen, wherever it stands.
    double planted =
        MadeUpYear.USUAL
            + MadeUpYear.HOT
            + MadeUpYear.WEAK_FORM / DemoStudio.studio().forms().size();
    assertThat(hot.interval().holds(planted)).isTrue();
    assertThat(said().cell(hot)).isEqualTo("top, edge");
  }

  @Test
  void onlyThePlantedPlacesAreCalledWorse() {
    for (Zone zone : Zone.values()) {
      for (Ring ring : Ring.values()) {
        CellRate rate = model.learned().get().at(zone, ring).orElseThrow();
        boolean planted = zone == Zone.TOP && ring == Ring.EDGE;
        assertThat(rate.verdict() == Verdict.WORSE).as(rate.cell()).isEqualTo(planted);
      }
    }
  }

  @Test
  void withOneFiringThereAreTooFewToTell() {
    firings.set(YEAR.subList(0, 1));
    CellRate place = model.learned().get().at(Zone.TOP, Ring.EDGE).orElseThrow();
    assertThat(place.proportion().of()).isLessThan(20);
    assertThat(said().rate(place)).isEqualTo("too few yet");
    assertThat(said().interval(place)).isEqualTo("–");
    assertThat(model.learned().get().suggestions()).isEmpty();
  }

  @Test
  void aSuggestionChangesNothingUntilItIsAcceptedAndCanBeTakenBack() {
    Studio before = studio.studio().get();
    String cool = MadeUpYear.coolGlaze(before).id();
    ZoneSuggestion suggestion =
        model.learned().get().suggestions().stream()
            .filter(one -> one.glazeId().equals(cool))
            .findFirst()
            .orElseThrow();
    assertThat(suggestion.zone()).isEqualTo(Zone.BOTTOM);
    assertThat(studio.studio().get()).isEqualTo(before);
    model.accept(suggestion, said().name(suggestion));
    assertThat(studio.studio().get().glaze(cool).orElseThrow().likes())
        .isNotEmpty()
        .doesNotContain(Zone.BOTTOM);
    assertThat(steps.nameOfLast().getValue()).contains("wish for");
    assertThat(model.changesNothing(suggestion)).isTrue();
    steps.undo();
    assertThat(studio.studio().get()).isEqualTo(before);
  }

  @Test
  void whatIsSaidOfASuggestionHasItsOwnFigures() {
    Learned learned = model.learned().get();
    ZoneSuggestion suggestion = learned.suggestions().get(0);
    CellRate behind = learned.behind(suggestion).orElseThrow();
    String rate = String.format(Locale.ROOT, "%.1f %%", 100 * behind.proportion().rate());
    assertThat(said().why(learned, suggestion))
        .contains(behind.proportion().flawed() + " of " + behind.proportion().of())
        .contains(rate)
        .contains(" flawed");
  }

  @Test
  void whereLostPiecesAloneAreCountedNothingIsSaidOfFlawedOnes() {
    ZoneSuggestion suggestion = model.learned().get().suggestions().get(0);
    model.count(Flaw.LOST);
    Learned learned = model.learned().get();
    CellRate behind = learned.behind(suggestion).orElseThrow();
    assertThat(said().why(learned, suggestion))
        .contains(behind.proportion().flawed() + " of " + behind.proportion().of() + " lost")
        .doesNotContain("flawed");
  }

  @Test
  void lostOnlyCountsFewer() {
    CellRate both = model.learned().get().at(Zone.TOP).orElseThrow();
    model.count(Flaw.LOST);
    CellRate lost = model.learned().get().at(Zone.TOP).orElseThrow();
    assertThat(lost.proportion().of()).isEqualTo(both.proportion().of());
    assertThat(lost.proportion().flawed()).isLessThan(both.proportion().flawed());
  }
}
