package shelfful.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import shelfful.edit.Difference;
import shelfful.edit.WorkPlan;
import shelfful.load.LoadRequest;
import shelfful.ware.Batch;

class ChangedListTest {
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final LoadRequest REQUEST = request();
  private static final WorkPlan PLAN =
      WorkPlan.of(
          new PlanALoad(REQUEST)
              .run(SearchLength.ofSteps(0), PlanListener.none())
              .orElseThrow()
              .load());

  private static LoadRequest request() {
    Opened<LoadRequest> opened =
        OpenAList.open(document("studio.json"), document("list-200.csv"), LocalDate.of(2026, 6, 1));
    return ((Opened.Ready<LoadRequest>) opened).value();
  }

  private static OpenAList.Document document(String name) {
    try {
      return new OpenAList.Document(name, Files.readAllBytes(DEMO.resolve(name)));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static LoadRequest of(List<Batch> batches) {
    return new LoadRequest(
        REQUEST.studio(),
        batches,
        REQUEST.firing(),
        REQUEST.columnPlanId(),
        REQUEST.day(),
        REQUEST.seed(),
        REQUEST.steps());
  }

  /** The list with so many pieces more, like those of its first batch. */
  private static LoadRequest more(int pieces) {
    List<Batch> batches = new ArrayList<>(REQUEST.batches());
    Batch like = batches.get(0);
    batches.add(
        new Batch(
            "more",
            like.formId(),
            like.glazeId(),
            pieces,
            like.stage(),
            like.cone(),
            like.mustGo(),
            like.priority(),
            like.due(),
            like.order(),
            like.set(),
            like.lidPlace()));
    return of(batches);
  }

  private static WorkPlan planned(WorkPlan before, LoadRequest request) {
    return WorkPlan.of(
        new ChangedList(before, request)
            .run(SearchLength.ofSteps(0), PlanListener.none())
            .orElseThrow()
            .load());
  }

  @Test
  void threeMorePiecesMoveATenthOfThemAtMost() {
    assertThat(PLAN.load().placed()).isGreaterThan(100);
    LoadRequest request = more(3);
    assertThat(ChangedList.isOf(PLAN, request)).isTrue();
    WorkPlan after = planned(PLAN, request);
    assertThat(after.load().placed()).isGreaterThanOrEqualTo(PLAN.load().placed());
    assertThat(after.load().request().pieces()).hasSize(REQUEST.pieces().size() + 3);
    Difference than = Difference.between(PLAN, after);
    assertThat(than.moved() + than.takenOut()).isLessThanOrEqualTo(PLAN.load().placed() / 10);
  }

  @Test
  void whatIsPinnedStaysWhereItIs() {
    List<String> standing =
        PLAN.load().layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(place -> place.pieceId())
            .toList();
    List<String> pinned = standing.subList(0, 20);
    WorkPlan before = new WorkPlan(PLAN.load(), new TreeSet<>(pinned), new TreeSet<>());
    WorkPlan after = planned(before, more(5));
    assertThat(pinned)
        .allSatisfy(id -> assertThat(after.placement(id)).isEqualTo(before.placement(id)));
  }

  @Test
  void whatIsNoLongerOnTheListIsNoLongerInThePlanNorPinned() {
    List<Batch> fewer = REQUEST.batches().subList(1, REQUEST.batches().size());
    String gone = REQUEST.batches().get(0).id();
    List<String> standing =
        PLAN.load().layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(place -> place.pieceId())
            .filter(id -> id.startsWith(gone + "-"))
            .toList();
    assertThat(standing).isNotEmpty();
    WorkPlan before = new WorkPlan(PLAN.load(), new TreeSet<>(standing), new TreeSet<>());
    ChangedList change = new ChangedList(before, of(fewer));
    assertThat(change.carried().pinned()).isEmpty();
    WorkPlan after = planned(before, of(fewer));
    assertThat(standing).allMatch(id -> after.placement(id).isEmpty());
    assertThat(standing).allMatch(id -> after.waiting(id).isEmpty());
  }

  @Test
  void anotherListIsNoChangeOfThisOne() {
    List<Batch> few = REQUEST.batches().subList(0, 1);
    assertThat(ChangedList.isOf(PLAN, of(few))).isFalse();
    assertThat(ChangedList.isOf(PLAN, REQUEST)).isTrue();
  }
}
