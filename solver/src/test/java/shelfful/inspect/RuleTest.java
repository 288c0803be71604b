package shelfful.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class RuleTest {
  /** The tests run in the module's folder. */
  private static final Path RULES = Path.of("..", "docs", "rules.md");

  @Test
  void standsInTheListOfRulesUnderTheSameId() throws IOException {
    List<String> written =
        Pattern.compile("^\\| `(\\w+)` \\|", Pattern.MULTILINE)
            .matcher(ofASetting())
            .results()
            .map(match -> match.group(1))
            .toList();
    assertThat(written)
        .containsExactlyInAnyOrderElementsOf(Arrays.stream(Rule.values()).map(Rule::id).toList());
  }

  /** The rules of a week follow under a heading of their own. */
  private static String ofASetting() throws IOException {
    return Files.readString(RULES).split("(?m)^# The rules of a week$")[0];
  }
}
