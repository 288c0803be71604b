package shelfful.ui.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.drawing.Sheet;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ui.DemoStudio;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

class PlanPageTest {
  private static final Manner MANNER =
      new Manner(Words.english(), LengthUnit.MILLIMETRES, NumberStyle.DOT);
  private static final String HALVES_ABOVE = "full-then-halves";

  private final Studio demo = DemoStudio.studio();
  private final StudioViewModel model = new StudioViewModel(MANNER, demo, new Steps());

  @BeforeEach
  void chooseThePlans() {
    model.choose(Section.PLANS);
  }

  private void choose(String planId) {
    List<KilnPlan> all = KilnPlan.of(model.studio().get());
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).plan().id().equals(planId)) {
        model.choose(i);
      }
    }
  }

  private ColumnPlan plan() {
    return KilnPlan.of(model.studio().get()).get(model.index().get()).plan();
  }

  private Group column(int index) {
    return model.page().get().get(index + 1);
  }

  private Optional<String> commit(int column, String label, String text) {
    Field field =
        column(column).fields().stream()
            .filter(one -> one.label().equals(label))
            .findFirst()
            .orElseThrow();
    return model.commit(field, text);
  }

  private void take(int column, String label) {
    model.take(
        column(column).steps().stream()
            .filter(one -> one.label().equals(label))
            .findFirst()
            .orElseThrow());
  }

  private Sheet picture() {
    return new StudioPictures(MANNER)
        .of(model.trial().get(), Section.PLANS, model.index().get())
        .orElseThrow();
  }

  @Test
  void allPlansOfAllKilnsAreListed() {
    assertThat(model.names())
        .hasSize(demo.kilns().stream().mapToInt(kiln -> kiln.columnPlans().size()).sum())
        .contains(
            demo.kilns().get(0).name() + ": " + demo.kilns().get(0).columnPlans().get(1).name());
  }

  @Test
  void aPostTakesThoseOverAndUnderItAlongAndTheDrawingFollows() {
    choose(HALVES_ABOVE);
    Sheet before = picture();
    Point was = plan().columns().get(1).posts().get(0);
    assertThat(plan().columns().get(0).posts()).as("it stands over a post").contains(was);
    double y = was.y().millimetres() - 4;
    assertThat(commit(1, "Post 1: behind the middle", y + " mm")).isEmpty();
    Point is = Point.ofMillimetres(was.x().millimetres(), y);
    assertThat(plan().columns().get(1).posts().get(0)).isEqualTo(is);
    assertThat(plan().columns().get(0).posts()).contains(is).doesNotContain(was);
    assertThat(picture()).isNotEqualTo(before);
    model.undo();
    assertThat(model.studio().get()).isEqualTo(demo);
  }

  @Test
  void whatCannotStandIsRefusedWithTheReasonAndChangesNothing() {
    choose(HALVES_ABOVE);
    assertThat(commit(1, "Post 1: behind the middle", "900 mm"))
        .hasValueSatisfying(why -> assertThat(why).contains("outside every shelf"));
    assertThat(commit(0, "Its place: right of the middle", "200 mm"))
        .hasValueSatisfying(why -> assertThat(why).contains("past the wall"));
    take(0, "Remove this column");
    assertThat(model.message().get()).contains("stands on");
    choose("full");
    take(0, "Remove the last post");
    assertThat(model.message().get()).contains("three posts");
    assertThat(model.studio().get()).isEqualTo(demo);
  }

  @Test
  void columnsAndPostsAreAddedAndTakenAway() {
    choose("full");
    take(0, "Add a column on top");
    assertThat(model.message().get()).isEmpty();
    Column lower = plan().columns().get(0);
    Column upper = plan().columns().get(1);
    assertThat(upper.standsOn()).containsExactly(lower.id());
    assertThat(upper.posts()).isEqualTo(lower.posts());
    take(1, "Add a post");
    assertThat(plan().columns().get(1).posts()).hasSize(lower.posts().size() + 1);
    assertThat(plan().columns().get(0).posts()).hasSize(lower.posts().size() + 1);
    take(1, "Remove the last post");
    take(1, "Remove this column");
    assertThat(plan().columns()).hasSize(1);
    take(0, "Remove the last post");
    assertThat(model.studio().get()).isEqualTo(demo);
  }

  @Test
  void aCopyOfAPlanIsAnotherPlanOfTheSameKilnAndGoesAgain() {
    choose(HALVES_ABOVE);
    int before = model.names().size();
    model.duplicate();
    assertThat(model.message().get()).isEmpty();
    assertThat(model.names()).hasSize(before + 1);
    List<ColumnPlan> plans = model.studio().get().kilns().get(0).columnPlans();
    assertThat(plans.get(plans.size() - 1).id()).isEqualTo(HALVES_ABOVE + "-2");
    choose(HALVES_ABOVE + "-2");
    model.delete();
    assertThat(model.studio().get()).isEqualTo(demo);
  }
}
