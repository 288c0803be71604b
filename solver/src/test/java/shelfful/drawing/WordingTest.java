package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {
  private final Wording wording = TextStyle.BODY.wording();

  @Test
  void keepsWhatTheTypefaceHas() {
    assertThat(wording.clean("Žďár – 3½\" ░ Ελλάς Привет")).isEqualTo("Žďár – 3½\" ░ Ελλάς Привет");
  }

  @Test
  void dropsControlCharactersAndDirectionOverrides() {
    assertThat(wording.clean("a\u0000b\u001b[31mc\u202Ed\u200Be\u2066f\uFEFF"))
        .isEqualTo("ab[31mcdef");
  }

  @Test
  void dropsHalvesOfPairs() {
    assertThat(wording.clean("a\uD800b\uDC00c")).isEqualTo("abc");
  }

  @Test
  void showsABoxForWhatTheTypefaceLacks() {
    assertThat(wording.clean("a漢b")).isEqualTo("a▯b");
  }

  @Test
  void turnsLineBreaksAndTabsIntoSingleSpaces() {
    assertThat(wording.clean("  one\r\n\ttwo  ")).isEqualTo("one two");
  }

  @Test
  void measuresAnEmAsThePointSize() {
    // The em dash of this typeface is one em wide; 72 pt are 25.4 mm.
    assertThat(new Wording(Weight.REGULAR, 72).width("—")).isCloseTo(25.4, within(0.001));
  }

  @Test
  void leavesWordsThatFitAlone() {
    assertThat(wording.fit("Soup bowl", 100)).isEqualTo("Soup bowl");
  }

  @Test
  void shortensWordsThatDoNotFit() {
    String fitted = wording.fit("A very long name indeed", 20);
    assertThat(fitted).startsWith("A very").endsWith("…");
    assertThat(wording.width(fitted)).isLessThanOrEqualTo(20);
  }

  @Test
  void givesNothingWhereNotEvenAnEllipsisFits() {
    assertThat(wording.fit("name", 0.5)).isEmpty();
  }

  @Test
  void wrapsBetweenWordsAndLosesNone() {
    String text = "Cut the kiln off from its supply before a hand goes in.";
    List<String> lines = wording.wrap(text, 30);
    assertThat(lines).hasSizeGreaterThan(2).allMatch(line -> wording.width(line) <= 30);
    assertThat(String.join(" ", lines)).isEqualTo(text);
  }

  @Test
  void keepsTiedWordsOnOneLine() {
    assertThat(wording.wrap("put it on 3\u00a0×\u00a0152.4\u00a0mm", 25))
        .contains("3\u00a0×\u00a0152.4\u00a0mm");
  }
}
