package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.load.LoadRequest;

/** Ware on the lists of two loads: A and B on the one, B and C on the other. */
class SharedLotsTest {
  private static ReadyWare ware(LoadRequest request) {
    return new LotSorter(request).sort(piece -> Optional.empty());
  }

  private static Scene scene() {
    return new Scene().cup("a", 60, 70).cup("b", 80, 90).cup("c", 110, 50);
  }

  private final SharedLots lots =
      new SharedLots(
          List.of(
              ware(scene().batch("A", "a", 5).batch("B", "b", 4).request()),
              ware(scene().batch("B", "b", 4).batch("C", "c", 3).request())));

  @Test
  void aBatchIsOneLotWhicheverLoadsListItIsOn() {
    assertThat(lots.indexIn(1, 0, 1)).as("B").isEqualTo(0);
    assertThat(lots.indexIn(0, 1, 0)).as("B").isEqualTo(1);
    assertThat(lots.indexIn(1, 0, 0)).as("A is not on the other list").isEqualTo(-1);
    assertThat(lots.indexIn(0, 1, 1)).as("C is not on the first list").isEqualTo(-1);
  }

  @Test
  void whatOneLoadTakesIsNotLeftForTheOther() {
    lots.take(0, new int[] {5, 1});
    lots.take(1, new int[] {2, 3});
    assertThat(lots.left(0, 0)).isEqualTo(0);
    assertThat(lots.left(0, 1)).isEqualTo(1);
    assertThat(lots.left(1, 0)).isEqualTo(1);
    assertThat(lots.left(1, 1)).isEqualTo(0);
    assertThat(lots.worthLeft()).as("one piece of no priority").isEqualTo(100);
    lots.take(0, new int[] {-1, 0});
    assertThat(lots.worthLeft()).isEqualTo(200);
    assertThat(lots.meanWorth()).isEqualTo(100);
  }
}
