package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class SearchBudgetTest {
  @Test
  void noStepsIsSpentFromTheStart() {
    assertThat(SearchBudget.ofSteps(0).isSpent()).isTrue();
    assertThat(SearchBudget.ofSteps(1).isSpent()).isFalse();
  }

  @Test
  void stepsAreShared() {
    SearchBudget all = SearchBudget.ofSteps(10);
    SearchBudget part = all.share(0.3);
    assertThat(part.termination().getScoreCalculationCountLimit()).isEqualTo(3);
    assertThat(all.without(part).termination().getScoreCalculationCountLimit()).isEqualTo(7);
    assertThat(part.without(all).isSpent()).isTrue();
  }

  @Test
  void whatBeginsLaterHasAsMuch() {
    AtomicLong now = new AtomicLong(1000);
    SearchBudget budget = SearchBudget.ofMillis(500, now::get);
    now.set(1500);
    assertThat(budget.isSpent()).isTrue();
    assertThat(budget.anew().termination().getMillisecondsSpentLimit()).isEqualTo(500);
    assertThat(SearchBudget.ofSteps(7).anew().termination().getScoreCalculationCountLimit())
        .isEqualTo(7);
  }

  @Test
  void timeRunsByItself() {
    AtomicLong now = new AtomicLong(1000);
    SearchBudget budget = SearchBudget.ofMillis(500, now::get);
    assertThat(budget.isInSteps()).isFalse();
    assertThat(budget.isSpent()).isFalse();
    assertThat(budget.without(budget.share(0.5))).isSameAs(budget);
    now.set(1400);
    assertThat(budget.termination().getMillisecondsSpentLimit()).isEqualTo(100);
    assertThat(budget.share(0.5).termination().getMillisecondsSpentLimit()).isEqualTo(50);
    now.set(1500);
    assertThat(budget.isSpent()).isTrue();
  }

  @Test
  void lastsWhatIsLeftOfIt() {
    AtomicLong now = new AtomicLong(1000);
    SearchBudget budget = SearchBudget.ofMillis(500, now::get);
    now.set(1200);
    assertThat(budget.lasts(300)).isTrue();
    assertThat(budget.lasts(301)).isFalse();
    assertThat(SearchBudget.ofSteps(1_000_000).lasts(1)).isFalse();
  }

  @Test
  void isCutToAtMost() {
    AtomicLong now = new AtomicLong(1000);
    SearchBudget budget = SearchBudget.ofMillis(500, now::get);
    assertThat(budget.atMost(80).termination().getMillisecondsSpentLimit()).isEqualTo(80);
    now.set(1450);
    assertThat(budget.atMost(80).termination().getMillisecondsSpentLimit()).isEqualTo(50);
    SearchBudget steps = SearchBudget.ofSteps(7).atMost(3);
    assertThat(steps.termination().getScoreCalculationCountLimit()).isEqualTo(7);
  }
}
