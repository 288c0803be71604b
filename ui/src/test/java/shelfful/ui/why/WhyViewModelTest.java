package shelfful.ui.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import org.junit.jupiter.api.Test;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.remedy.Change;
import shelfful.remedy.Remedy;
import shelfful.remedy.RemedyKind;
import shelfful.ui.SmallPlan;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class WhyViewModelTest {
  private final Words words = Words.english();
  private final List<Remedy> taken = new ArrayList<>();
  private final WhyViewModel model =
      new WhyViewModel(words, new SameThreadTaskRunner(), taken::add);

  private static long in(Load load, String batch) {
    return load.layers().stream()
        .flatMap(layer -> layer.placements().stream())
        .filter(one -> one.pieceId().startsWith(batch + "-"))
        .count();
  }

  @Test
  void everyWaitingPieceIsListedWithItsReason() {
    InspectedLoad load = SmallPlan.load();
    model.look(Optional.of(load));
    int waiting = model.rows().stream().mapToInt(row -> row.group().size()).sum();
    assertThat(waiting).isEqualTo(load.load().leftOut().size()).isPositive();
    assertThat(model.rows()).allMatch(row -> !row.group().reason().sentence().isBlank());
    assertThat(model.rows()).allMatch(row -> row.look() == WaitingRow.Look.NOT_YET);
  }

  @Test
  void whatIsFoundPlacesPiecesAndPassesTheJudge() {
    model.look(Optional.of(SmallPlan.load()));
    model.search(false);
    assertThat(model.searching().get()).isFalse();
    for (WaitingRow row : model.rows()) {
      assertThat(row.look()).isEqualTo(WaitingRow.Look.DONE);
      assertThat(row.remedies().isEmpty()).isEqualTo(row.hasNone());
      for (Remedy remedy : row.remedies()) {
        Load after = remedy.load().load();
        assertThat(new Inspector().inspect(after)).isInstanceOf(Inspection.Passed.class);
        if (remedy.kind() != RemedyKind.NEXT_FIRING) {
          String batch = row.group().batch().id();
          assertThat(in(after, batch)).isGreaterThan(in(SmallPlan.load().load(), batch));
        }
      }
    }
    assertThat(model.rows()).anyMatch(row -> !row.remedies().isEmpty());
  }

  @Test
  void whatIsStoppedHalfWayDoesNotSayThatNothingHelps() {
    model.look(Optional.of(SmallPlan.load()));
    model
        .rows()
        .addListener(
            (ListChangeListener<WaitingRow>)
                change -> {
                  if (model.rows().get(0).look() == WaitingRow.Look.GOES_ON) {
                    model.stop();
                  }
                });
    model.search(false);
    WaitingRow row = model.rows().get(0);
    assertThat(row.look()).isEqualTo(WaitingRow.Look.STOPPED);
    assertThat(row.hasNone()).isFalse();
    assertThat(model.told().get()).startsWith("Stopped.");
  }

  @Test
  void aRemedyIsHandedToTheDeskAndSaidToBeDone() {
    model.look(Optional.of(SmallPlan.load()));
    Remedy remedy = relaxed(SmallPlan.load());
    model.take(remedy);
    assertThat(taken).containsExactly(remedy);
    assertThat(model.told().get()).startsWith("Done: a distance kept less strictly");
    model.look(Optional.empty());
    assertThat(model.rows()).isEmpty();
  }

  @Test
  void aRemedyThatTheDeskRefusesIsSaidNotToBeDone() {
    WhyViewModel refused = new WhyViewModel(words, new SameThreadTaskRunner(), remedy -> false);
    refused.look(Optional.of(SmallPlan.load()));
    refused.take(relaxed(SmallPlan.load()));
    assertThat(refused.told().get()).startsWith("Not done");
  }

  @Test
  void aRelaxedDistanceIsNamedAsARiskWithItsFigure() {
    InspectedLoad load = SmallPlan.load();
    RemedyWords said = new RemedyWords(words, load.load().request(), LengthUnit.MILLIMETRES);
    List<String> costs = said.costs(relaxed(load), load.load().placed());
    assertThat(costs).anyMatch(cost -> cost.startsWith("A RISK") && cost.contains("1.5 mm"));
    assertThat(costs).anyMatch(cost -> cost.equals("3 other pieces move"));
    assertThat(costs).anyMatch(cost -> cost.contains("2 × Mug"));
  }

  /** Three moved, two mugs out, one distance 1.5 mm less. */
  private static Remedy relaxed(InspectedLoad load) {
    Change change = new Change(3, Map.of("M01", 2), Map.of("V01", 1), Map.of(), List.of());
    return new Remedy(
        RemedyKind.GAP_RELAXED,
        1,
        "A sentence.",
        load,
        change,
        Optional.of(Length.ofMillimetres(1.5)));
  }
}
