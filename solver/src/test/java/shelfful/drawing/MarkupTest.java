package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkupTest {
  @Test
  void writesEveryTextSoThatItIsReadBackAsText() {
    assertThat(Markup.text("<a href='x' b=\"y\">&</a>"))
        .isEqualTo("&lt;a href=&#39;x&#39; b=&quot;y&quot;&gt;&amp;&lt;/a&gt;");
  }

  @Test
  void leavesOutWhatCannotBeSeen() {
    assertThat(Markup.text("a\u202Eb\u0000c\u200Fd\uD800e\tf\ng")).isEqualTo("abcde f g");
  }

  @Test
  void keepsLettersOfEveryLanguage() {
    assertThat(Markup.text("Krüge עברית 漢字 🔥")).isEqualTo("Krüge עברית 漢字 🔥");
  }

  @ParameterizedTest
  @CsvSource({
    "0,3,0", "-0.0004,3,0", "12.3456,3,12.346", "12.3456,2,12.35", "12.3456,1,12.3",
        "-1.05,2,-1.05",
    "100,2,100", "0.5,3,0.5", "7.0049,2,7", "9.999,2,10", "210,3,210", "0.007,3,0.007"
  })
  void writesMillimetresAsShortAsCanBe(double millimetres, int decimals, String written) {
    assertThat(Markup.number(millimetres, decimals)).isEqualTo(written);
  }
}
