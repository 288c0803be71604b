package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.ware.Batch;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/** CWE-1236 and OWASP ASVS 5, 1.2.10: no cell of a table we write begins like a formula. */
class FormulaGuardTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "=cmd|' /C calc'!A0",
        "=HYPERLINK(\"x\")",
        "+1+1",
        "+cmd",
        "-1+1",
        "-cmd|'x'!A1",
        "@SUM(1)",
        "=",
        "+",
        "-",
        "@",
        "'",
        "'=1",
        "''=1",
        "'quoted'",
        "=1;2",
        "=1,2",
        "=\"a\"",
        "\uff1d1+1",
        "\uff0b1",
        "\uff0d1+1",
        "\uff20A1",
        "=1\u00a0",
        "-2-3",
        "--5",
        "+-5",
        "=-5",
        "@=1",
        "=@1",
        "-A1",
        "=A1:B2",
        "+A1",
        "=IMPORTXML(1)",
        "= 1",
        "- 1",
        "plain",
        "a=1",
        "1+1",
        "a'b",
        "a,b",
        "a;b",
        "a\"b",
        "\"=1\""
      })
  void comesBackUnchangedAndNeverBeginsLikeAFormula(String order) {
    byte[] table = BatchListWriter.table(List.of(batch(order)));

    String text = new String(table, StandardCharsets.UTF_8).replace("\ufeff", "");
    String row = text.lines().skip(1).findFirst().orElseThrow();
    String cell = row.split(",", 10)[9].replaceFirst("^\"", "");
    assertThat(cell).doesNotMatch("(?s)[=+\\-@\t\r\n\uff1d\uff0b\uff0d\uff20].*");
    assertThat(BatchListReader.read("list.csv", table, SmallStudio.studio()).found())
        .contains(List.of(batch(order.strip())));
  }

  @Test
  void leavesNumbersNumbers() {
    assertThat(FormulaGuard.guarded("-5")).isEqualTo("-5");
    assertThat(FormulaGuard.guarded("-5.25")).isEqualTo("-5.25");
    assertThat(FormulaGuard.guarded("-5+1")).isEqualTo("'-5+1");
  }

  private static Batch batch(String order) {
    return new Batch(
        "B1",
        "cup",
        Optional.empty(),
        1,
        Stage.GLAZED,
        Optional.empty(),
        false,
        1,
        Optional.empty(),
        Optional.of(order.replace('\u00a0', ' ').strip()),
        Optional.empty(),
        LidPlace.ON);
  }
}
