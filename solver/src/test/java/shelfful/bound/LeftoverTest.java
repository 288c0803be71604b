package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.bound.ConvexPolygon.Side;
import shelfful.geometry.Region;

/** What two half shelves, 3 mm apart, leave of the room over a full one. */
class LeftoverTest {
  private static final Region BACK = Region.halfDisc(270, Math.PI / 2, 1.5);
  private static final Region FRONT = Region.halfDisc(270, -Math.PI / 2, 1.5);
  private static final ConvexPolygon AXIS =
      ConvexPolygon.everywhere().within(Region.disc(235), 0, Side.WALL);

  @Test
  void bothHalvesLeaveNothing() {
    assertThat(Leftover.of(AXIS, List.of(BACK, FRONT), 20).isEmpty()).isTrue();
  }

  @Test
  void anOutlineThinnerThanTheCutCanStandBetween() {
    assertThat(Leftover.of(AXIS, List.of(BACK, FRONT), 1).isEmpty()).isFalse();
  }

  @Test
  void oneHalfLeavesTheOther() {
    ConvexPolygon left = Leftover.of(AXIS, List.of(BACK), 20);
    assertThat(left.reach(0, 1)).isCloseTo(1.5 - 20, within(0.5));
    assertThat(left.reach(0, -1)).isCloseTo(235, within(0.5));
  }
}
