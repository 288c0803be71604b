package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.fixture.RandomDice;
import shelfful.planning.RebuildMove.Change;

class SlotTableTest {
  private final Bench bench =
      Bench.of(
          new Scene()
              .cup("a", 60, 50)
              .cup("b", 80, 70)
              .batch("A", "a", 6)
              .batch("B", "b", 4)
              .request());
  private final SlotTable slots = new SlotTable(bench.stand(), 4, bench.ware());

  private void carryOut(List<Change> changes) {
    changes.forEach(change -> change.piece().setSlot(change.to()));
  }

  @Test
  void everyShelfAtEveryLevelIsASlot() {
    assertThat(slots.slots())
        .containsExactly(
            new LayerSlot(0, 0, 0),
            new LayerSlot(0, 1, 0),
            new LayerSlot(0, 2, 0),
            new LayerSlot(0, 3, 0));
  }

  @Test
  void whatMayStayStays() {
    List<PieceChoice> pieces = bench.pieces();
    carryOut(slots.changes(pieces, Bench.sketch(new int[] {3, 1}, new int[] {1, 2})));
    List<Change> changes = slots.changes(pieces, Bench.sketch(new int[] {3, 1}, new int[] {2, 1}));
    assertThat(changes).hasSize(2);
    assertThat(changes.stream().filter(change -> change.to() == null)).hasSize(1);
    assertThat(slots.changes(pieces, Bench.sketch(new int[] {3, 1}, new int[] {1, 2}))).isEmpty();
  }

  @Test
  void anyStandingBecomesAnyOther() {
    RandomDice dice = new RandomDice(2);
    List<PieceChoice> pieces = bench.pieces();
    for (int i = 0; i < 300; i++) {
      Sketch wanted = drawn(dice);
      carryOut(slots.changes(pieces, wanted));
      assertThat(SlotCounts.of(pieces).sketch(bench.stand(), bench.ware().lots(), new Sketch(1, 2)))
          .isEqualTo(wanted);
    }
  }

  private static Sketch drawn(RandomDice dice) {
    int a = dice.whole(0, 6);
    int b = dice.whole(0, 4);
    int low = dice.whole(0, a);
    int small = dice.whole(0, b);
    Sketch sketch = Bench.sketch(new int[] {low, small}, new int[] {a - low, b - small});
    sketch.dropEmptyLevels();
    return sketch;
  }
}
