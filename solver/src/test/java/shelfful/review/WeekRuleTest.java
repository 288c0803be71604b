package shelfful.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class WeekRuleTest {
  /** The tests run in the module's folder. */
  private static final Path RULES = Path.of("..", "docs", "rules.md");

  @Test
  void standsInTheListOfRulesUnderTheSameId() throws IOException {
    String ofAWeek = Files.readString(RULES).split("(?m)^# The rules of a week$")[1];
    List<String> written =
        Pattern.compile("^\\| `(\\w+)` \\|", Pattern.MULTILINE)
            .matcher(ofAWeek)
            .results()
            .map(match -> match.group(1))
            .toList();
    assertThat(written)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(WeekRule.values()).map(WeekRule::id).toList());
  }
}
