package shelfful.ui.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

class RoomWordsTest {
  private final RoomWords english = new RoomWords(Words.english());

  @Test
  void saysFullOnlyWhereTheCountIsTheProvedLimit() {
    assertThat(english.of(46, OptionalInt.of(46), true)).contains("full");
    assertThat(english.of(45, OptionalInt.of(46), true)).doesNotContain("full");
    assertThat(english.of(46, OptionalInt.of(47), true)).doesNotContain("full");
  }

  @Test
  void saysHowManyMoreCouldEverFit() {
    assertThat(english.of(154, OptionalInt.of(167), true))
        .contains("at most 13 more")
        .contains("167");
    assertThat(new RoomWords(Words.in(Language.GERMAN)).of(154, OptionalInt.of(167), true))
        .contains("höchstens 13 weitere");
  }

  @Test
  void aLoadThatBreaksRulesIsNotCalledFull() {
    assertThat(english.of(46, OptionalInt.of(46), false)).doesNotContain("full");
  }

  @Test
  void saysNothingWhileTheLimitIsNotKnown() {
    assertThat(english.of(46, OptionalInt.empty(), true)).isEmpty();
  }
}
