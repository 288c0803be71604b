package shelfful.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorthCommandTest {
  private static final String STUDIO = "../demo-data/studio.json";
  private static final String LIST = "../demo-data/list-60.csv";

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    return Shelfful.run(args, new PrintStream(out), new PrintStream(err));
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aKilnThatIsNotThereIsToldOnceHoweverManyLists() {
    assertThat(run("worth", STUDIO, LIST, LIST, "--kiln", "none")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told().lines()).singleElement().asString().contains("has no kiln none");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Infinity", "NaN", "-1", "1e300"})
  void aCostIsASumOfMoney(String cost) {
    assertThat(run("worth", STUDIO, LIST, "--firings-per-month", "12", "--firing-cost", cost))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(told()).contains("--firing-cost").doesNotContain("fault");
  }
}
