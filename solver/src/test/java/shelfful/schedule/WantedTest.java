package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
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
  void whatIsLeftOverAgainAndAgainIsWantedMoreAndMoreUpToALimit() {
    double before = 1;
    for (int round = 0; round < 30; round++) {
      wanted.leftOver(Map.of(plate, 0.3));
      assertThat(wanted.times(plate)).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(2.5);
      before = wanted.times(plate);
    }
    assertThat(before).isGreaterThan(2);
    assertThat(wanted.times(mug)).isEqualTo(1);
  }

  @Test
  void aKindOfWhichALittleIsLeftIsWantedLittleMoreThanOneThatIsLeftAsAWhole() {
    wanted.leftOver(Map.of(plate, 1.0, mug, 0.05));

    assertThat(wanted.times(plate) - 1)
        .isEqualTo(20 * (wanted.times(mug) - 1), Offset.offset(1e-9));
  }

  @Test
  void whatIsNotLeftOverAnyMoreIsWantedLess() {
    wanted.leftOver(Map.of(plate, 1.0));
    double before = wanted.times(plate);
    wanted.leftOver(Map.of(mug, 1.0));
    assertThat(wanted.times(plate)).isGreaterThan(1).isLessThan(before);
  }
}
