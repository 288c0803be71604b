package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One case on each side of every limit. */
class JsonLimitsTest {

  @Test
  void nestingStopsAtSixtyFour() {
    assertThat(isJson("[".repeat(64) + "]".repeat(64))).isTrue();
    assertThat(isJson("[".repeat(65) + "]".repeat(65))).isFalse();
  }

  @Test
  void textsStopAtAMegabyte() {
    assertThat(isJson("\"" + "x".repeat(1 << 20) + "\"")).isTrue();
    assertThat(isJson("\"" + "x".repeat((1 << 20) + 1) + "\"")).isFalse();
  }

  @Test
  void numbersStopAtSixtyFourDigits() {
    assertThat(isJson("1".repeat(64))).isTrue();
    assertThat(isJson("1".repeat(65))).isFalse();
    assertThat(isJson("0." + "1".repeat(66))).isFalse();
  }

  @Test
  void namesStopAtTwoHundredAndFiftySix() {
    assertThat(isJson("{\"" + "n".repeat(256) + "\": 1}")).isTrue();
    assertThat(isJson("{\"" + "n".repeat(257) + "\": 1}")).isFalse();
  }

  @Test
  void tokensStopAtTwoMillion() {
    assertThat(isJson("[" + "1,".repeat(1_999_000) + "1]")).isTrue();
    assertThat(isJson("[" + "1,".repeat(2_001_000) + "1]")).isFalse();
  }

  @Test
  void documentsStopAtThirtyTwoMegabytes() {
    byte[] spaces = new byte[32 << 20];
    Arrays.fill(spaces, (byte) ' ');
    spaces[0] = '[';
    spaces[1] = ']';
    assertThat(isJson(spaces)).isTrue();
    assertThat(isJson(Arrays.copyOf(spaces, spaces.length + 1))).isFalse();
  }

  @Test
  void namesStandOnceAndNothingFollows() {
    assertThat(isJson("{\"a\": 1, \"b\": 1}")).isTrue();
    assertThat(isJson("{\"a\": 1, \"\\u0061\": 1}")).isFalse();
    assertThat(isJson("{} {}")).isFalse();
    assertThat(isJson("{} x")).isFalse();
  }

  @Test
  void takesNothingThatIsOnlyNearlyJson() {
    for (String text :
        List.of(
            "{a: 1}",
            "{'a': 1}",
            "[1,]",
            "[01]",
            "[+1]",
            "[.5]",
            "[NaN]",
            "[1 /* one */]",
            "# x")) {
      assertThat(isJson(text)).as(text).isFalse();
    }
  }

  private static boolean isJson(String text) {
    return isJson(text.getBytes(StandardCharsets.UTF_8));
  }

  private static boolean isJson(byte[] bytes) {
    Problems problems = new Problems("a.json");
    boolean read = StrictJson.read(bytes, problems).isPresent();
    assertThat(problems.all()).hasSize(read ? 0 : 1);
    return read;
  }
}
