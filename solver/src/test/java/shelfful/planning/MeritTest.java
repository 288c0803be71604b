package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeritTest {
  @Test
  void nothingBrokenBeatsMustGoBeatsWorthBeatsFewLayers() {
    List<Merit> worstFirst =
        List.of(
            new Merit(1, 0, 900, 1),
            new Merit(0, 2, 900, 1),
            new Merit(0, 1, 100, 9),
            new Merit(0, 0, 100, 9),
            new Merit(0, 0, 101, 9),
            new Merit(0, 0, 101, 8));
    List<Merit> mixed = new ArrayList<>(worstFirst);
    Collections.reverse(mixed);
    Collections.sort(mixed);
    assertThat(mixed).isEqualTo(worstFirst);
  }

  @Test
  void nearlyAsGoodIsWorthTheShareThatIsAskedAndNothingElseWorse() {
    Merit best = new Merit(0, 1, 10_000, 5);
    assertThat(new Merit(0, 1, 9_900, 9).isNearly(best, 0.99)).isTrue();
    assertThat(best.isNearly(best, 0.99)).isTrue();
    assertThat(new Merit(0, 1, 9_899, 5).isNearly(best, 0.99)).isFalse();
    assertThat(new Merit(0, 1, 9_899, 5).isNearly(best, 0.97)).isTrue();
    assertThat(new Merit(0, 2, 10_000, 5).isNearly(best, 0.99)).isFalse();
    assertThat(new Merit(1, 1, 10_000, 5).isNearly(best, 0.99)).isFalse();
  }

  @Test
  void aSketchIsWorthWhatStandsInIt() {
    Bench bench =
        Bench.of(
            new Scene()
                .cup("a", 60, 50)
                .cup("b", 80, 70)
                .batch("A", "a", 6)
                .batch(
                    new shelfful.ware.Batch(
                        "B",
                        "b",
                        java.util.Optional.empty(),
                        4,
                        shelfful.ware.Stage.GLAZED,
                        java.util.Optional.empty(),
                        true,
                        3,
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        shelfful.ware.LidPlace.ON))
                .request());
    Sketch sketch = Bench.sketch(new int[] {2, 1}, new int[] {0, 1});
    assertThat(Merit.of(sketch, bench.judge())).isEqualTo(new Merit(0, 2, 2 * 100 + 2 * 300, 2));
  }
}
