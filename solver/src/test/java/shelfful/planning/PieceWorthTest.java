package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shelfful.load.LoadRequest;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

class PieceWorthTest {
  private static List<Lot> lots(int priorityOfB, boolean mustGoC) {
    LoadRequest request =
        new Scene()
            .cup("a", 60, 70)
            .cup("b", 80, 90)
            .cup("c", 110, 50)
            .batch("A", "a", 10)
            .batch(batch("B", "b", false, priorityOfB))
            .batch(batch("C", "c", mustGoC, 1))
            .request();
    return new LotSorter(request).sort(piece -> Optional.empty()).lots();
  }

  private static Batch batch(String id, String form, boolean mustGo, int priority) {
    return new Batch(
        id,
        form,
        Optional.empty(),
        10,
        Stage.GLAZED,
        Optional.empty(),
        mustGo,
        priority,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        LidPlace.ON);
  }

  private static double of(List<Lot> lots, int index) {
    return new PieceWorth(lots).of(lots.get(index));
  }

  @Test
  void aPieceOfNoPriorityIsAPlainPieceOfAList() {
    List<Lot> lots = lots(3, false);
    assertThat(of(lots, 0)).isEqualTo(1);
    assertThat(of(lots, 1)).isEqualTo(3);
  }

  @Test
  void whereWareWeighsByItsRoomThePlainPieceIsAmongTheLightest() {
    List<Lot> lots = lots(400, false);
    assertThat(of(lots, 0)).isEqualTo(1);
    assertThat(of(lots, 1)).isEqualTo(400);
  }

  @Test
  void aMustGoPieceOutweighsWhateverElseThereIs() {
    for (int priority : new int[] {1, 9, 400}) {
      List<Lot> lots = lots(priority, true);
      assertThat(of(lots, 2)).isGreaterThanOrEqualTo(2 * of(lots, 1));
    }
  }
}
