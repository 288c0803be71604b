package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import shelfful.fixture.Forms;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.LidPlace;
import shelfful.ware.Zone;

/** Lists that once came out empty, or never came out at all, though there was room. */
class PlannerFindsWhatIsThereTest {
  private static Batch lidBeside(Batch batch) {
    return new Batch(
        batch.id(),
        batch.formId(),
        batch.glazeId(),
        batch.quantity(),
        batch.stage(),
        batch.cone(),
        batch.mustGo(),
        batch.priority(),
        batch.due(),
        batch.order(),
        batch.set(),
        LidPlace.BESIDE);
  }

  /** Nothing can be changed here, so the steps could never be spent. */
  @Test
  void aSearchWithNothingToChangeEnds() {
    Load load = new Scene().shelves(1).cup("a", 400, 60).batch("A", "a", 1).plan(1_000_000);
    assertThat(load.placed()).isEqualTo(1);
  }

  /** With its gap it covers (426 / 450)², nine tenths of the shelf. */
  @Test
  void oneWideDishGoesIn() {
    assertThat(new Scene().cup("a", 420, 60).batch("A", "a", 1).plan(0).placed()).isEqualTo(1);
  }

  /** One shelf: pots alone would fill it, and no pot goes without its lid. */
  @Test
  void potsLeaveRoomForTheirLids() {
    Scene scene = new Scene().shelves(1).form(Forms.jar()).batch("J", "jar", 30);
    Load load = scene.but(PlannerFindsWhatIsThereTest::lidBeside).plan(20);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    // Thirty discs of 104 and 100 mm would not fit; five pots and five lids do: eleven discs of a
    // radius of 50 + 4 need 3.9238 × 54 = 212 mm (Melissen 1994) of the 220 + 4 there are.
    assertThat(load.placed()).isBetween(10, 16);
  }

  /** In a chamber of 800 mm three layers of 115 mm lie twice at the bottom and once at the top. */
  @Test
  void wareKeptOutOfTheMiddleStandsBelowAndAbove() {
    Load load =
        new Scene()
            .chamber(500, 800)
            .post("140", 140, 9)
            .cup("a", 90, 115)
            .glaze("shy", Set.of(), Set.of(Zone.MIDDLE))
            .batch("A", "a", "shy", 100)
            .plan(0);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(load.layers()).hasSize(3);
  }

  /** The liked shelves carry a kilogram, the pots weigh more. */
  @Test
  void heavyWareGoesOnTheStrongerShelf() {
    Form heavy = Forms.form("pot", Forms.beaker().profile(), 1.5);
    Scene scene = new Scene().shelvesCarry(1).otherShelf("strong", 14, 3).form(heavy);
    Load load = scene.batch("P", "pot", 4).plan(0);
    assertThat(LoadAccount.wrong(load)).isEmpty();
    assertThat(load.placed()).isEqualTo(4);
  }

  /** In 700 mm a lone layer lies in the middle, and so does a second one on the lowest posts. */
  @Test
  void nothingIsSaidToFitThatWasNotSeenToFit() {
    Load load =
        new Scene()
            .chamber(500, 700)
            .post("140", 140, 9)
            .cup("a", 90, 115)
            .glaze("shy", Set.of(), Set.of(Zone.MIDDLE))
            .batch("A", "a", "shy", 100)
            .plan(0);
    assertThat(load.placed()).isZero();
    assertThat(load.leftOut())
        .extracting(LeftOut::sentence)
        .allMatch(sentence -> sentence.contains("115 mm") && sentence.contains("empty kiln"));
  }
}
