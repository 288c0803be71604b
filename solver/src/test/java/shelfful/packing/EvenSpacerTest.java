package shelfful.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shelfful.geometry.Region;

class EvenSpacerTest {
  @Test
  void spreadsSevenDiscsToTheGapThatTheRecordAllows() {
    // Gaps g all round turn radii r into r + g/2 and the circle R into R - g/2; the record ratio
    // of seven is 3 (Graham 1968), so R - g/2 = 3 (r + g/2).
    double radius = 30;
    double room = 250;
    double gap = (room - 3 * radius) / 2;
    ShelfQuestion question =
        Questions.touching(Region.disc(room), List.of(BodyKind.round("pot", radius, 10)), 7);
    Packed start = (Packed) new ShelfPacker().pack(question, Effort.QUICK, 1);
    Packed spread = new EvenSpacer().spread(question, start, Effort.NORMAL, 1);
    assertThat(spread.spare()).isCloseTo(gap, within(0.05));
    Judge.accepts(question, spread);
  }

  @Test
  void neverMakesTheSmallestGapSmaller() {
    RandomQuestions questions = new RandomQuestions(46);
    int spread = 0;
    for (int i = 0; i < 25; i++) {
      ShelfQuestion question = questions.next();
      if (new ShelfPacker().pack(question, Effort.QUICK, 1) instanceof Packed start) {
        Packed wider = new EvenSpacer().spread(question, start, Effort.QUICK, 1);
        assertThat(wider.spare()).isGreaterThanOrEqualTo(start.spare());
        assertThat(new EvenSpacer().spread(question, start, Effort.QUICK, 1)).isEqualTo(wider);
        if (question.bodies() > 0) {
          Judge.accepts(question, wider);
          spread++;
        }
      }
    }
    assertThat(spread).isGreaterThan(8);
  }

  @Test
  void satisfiedSoonerItIsNoFurtherOffThanItsPrecision() {
    double gap = (250 - 3 * 30) / 2.0;
    ShelfQuestion question =
        Questions.touching(Region.disc(250), List.of(BodyKind.round("pot", 30, 10)), 7);
    Packed start = (Packed) new ShelfPacker().pack(question, Effort.QUICK, 1);
    Packed rough = new EvenSpacer(() -> false, 4).spread(question, start, Effort.NORMAL, 1);
    Packed fine = new EvenSpacer().spread(question, start, Effort.NORMAL, 1);
    // The record allows a gap of 80 mm; see above.
    assertThat(rough.spare()).isBetween(gap - 4, gap + 0.05).isLessThan(fine.spare());
    Judge.accepts(question, rough);
  }

  @Test
  void refusesASettingOfOtherBodies() {
    ShelfQuestion two = Questions.circles(Region.disc(300), 2);
    Packed packed = (Packed) new ShelfPacker().pack(two, Effort.QUICK, 1);
    ShelfQuestion three = Questions.circles(Region.disc(300), 3);
    assertThatThrownBy(() -> new EvenSpacer().spread(three, packed, Effort.QUICK, 1))
        .hasMessageContaining("[2]")
        .hasMessageContaining("[3]");
  }
}
