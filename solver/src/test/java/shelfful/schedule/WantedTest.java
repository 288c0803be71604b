package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.ware.FiringKind;

class WantedTest {
  private final UnitKind plate = new UnitKind(0, FiringKind.GLAZE, List.of());
  private final UnitKind mug = new UnitKind(1, FiringKind.GLAZE, List.of());
  private final Wanted wanted = new Wanted();

  @Test
  void atFirstEverythingCountsItsRoom() {
    assertThat(wanted.times(plate)).isEqualTo(1);
  }

  @Test
  void whatIsLeftOverAgainAndAgainIsWantedMoreAndMoreUpToTwice() {
    double before = 1;
    for (int round = 0; round < 30; round++) {
      wanted.leftOver(List.of(plate));
      assertThat(wanted.times(plate)).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(2);
      before = wanted.times(plate);
    }
    assertThat(before).isGreaterThan(1.9);
    assertThat(wanted.times(mug)).isEqualTo(1);
  }

  @Test
  void whatIsNotLeftOverAnyMoreIsWantedLess() {
    wanted.leftOver(List.of(plate));
    double before = wanted.times(plate);
    wanted.leftOver(List.of(mug));
    assertThat(wanted.times(plate)).isGreaterThan(1).isLessThan(before);
  }
}
