package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.measure.Point;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/** Thirds of a chamber of 300 mm: up to 100, up to 200, above. Headroom 10 mm. */
class ZonesTest {
  private final Stand stand = new Scene().chamber(500, 300).stand();

  private Zone covered(long z, long over) {
    LevelStand level =
        new LevelStand(
            (z - 10) * 1000, z * 1000, (over - z - 10) * 1000, List.of(), List.of(Point.ORIGIN));
    return Zones.of(stand, level);
  }

  @Test
  void theMiddleOfTheClearHeightDecides() {
    assertThat(covered(30, 168)).isEqualTo(Zone.BOTTOM);
    assertThat(covered(30, 172)).isEqualTo(Zone.MIDDLE);
    assertThat(covered(130, 268)).isEqualTo(Zone.MIDDLE);
    assertThat(covered(130, 272)).isEqualTo(Zone.TOP);
  }

  @Test
  void aMiddleOnTheBorderBelongsToTheUpperZone() {
    assertThat(covered(30, 170)).isEqualTo(Zone.MIDDLE);
    assertThat(covered(130, 270)).isEqualTo(Zone.TOP);
  }

  @Test
  void theTopLayerReachesUpToTheLid() {
    LevelStand top = new LevelStand(20_000, 30_000, 260_000, List.of(), List.of());
    assertThat(Zones.of(stand, top)).isEqualTo(Zone.MIDDLE);
    LevelStand high = new LevelStand(90_000, 101_000, 189_000, List.of(), List.of());
    assertThat(Zones.of(stand, high)).isEqualTo(Zone.TOP);
  }
}
