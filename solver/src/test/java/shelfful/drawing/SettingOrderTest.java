package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shelfful.kiln.Loading;
import shelfful.load.Layer;

class SettingOrderTest {
  private static List<SetPiece> pieces() {
    Setting setting = new Setting(Loads.sixty());
    Layer layer = setting.layers().get(0);
    return setting.on(layer);
  }

  private static List<String> ids(List<SetPiece> pieces) {
    return pieces.stream().map(piece -> piece.piece().id()).toList();
  }

  @Test
  void numbersFromOneWithoutAGap() {
    List<SetPiece> pieces = pieces();
    for (int i = 0; i < pieces.size(); i++) {
      assertThat(pieces.get(i).number()).isEqualTo(i + 1);
    }
  }

  @Test
  void givesTheSameNumbersInWhateverOrderThePiecesCome() {
    List<SetPiece> shuffled = new ArrayList<>(pieces());
    Collections.shuffle(shuffled, new Random(5));
    assertThat(ids(SettingOrder.number(shuffled, Loading.TOP))).isEqualTo(ids(pieces()));
  }

  @Test
  void goesFromTheFarSideToTheFrontAndLeftToRightInEachRow() {
    List<SetPiece> pieces = pieces();
    for (int i = 1; i < pieces.size(); i++) {
      SetPiece before = pieces.get(i - 1);
      SetPiece after = pieces.get(i);
      boolean sameRow = Math.abs(before.y() - after.y()) < 1;
      assertThat(sameRow ? before.x() < after.x() : before.y() > after.y()).isTrue();
    }
  }

  @Test
  void takesPiecesThatStandALittleUnevenlyAsOneRow() {
    HandMadeLoad load =
        new HandMadeLoad(Pottery.studio(), "drum").batch("B1", "mug", "ash", 3, null);
    load.set("B1", 100, 120).set("B1", -100, 110).set("B1", 0, 90);
    Setting setting = new Setting(load.layer("L1", "base", 1, 0, 70, "p51").stamped());
    assertThat(ids(setting.on(setting.layers().get(0))))
        .containsExactly("B1-002", "B1-003", "B1-001");
  }
}
