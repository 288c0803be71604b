package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ninety ways to write a number, tried in every kind of field: accepted or refused as written down
 * here.
 */
class NumbersInFilesTest {
  /** Each kind of field: what stands in the small studio, to be replaced. */
  private static final Map<String, String> FIELDS =
      Map.of(
          "size", "\"across\": 10,",
          "clearance", "\"tolerance\": 1,",
          "place", "\"at\": [0,",
          "count", "\"count\": 12",
          "mass", "\"mass\": 0.25",
          "angle", "\"turn\": 0");

  /** A number as JSON, and the kinds of field that accept it. */
  private static final String[][] TABLE = {
    {"80", "size clearance count mass angle"},
    {"80.0", "size clearance count mass angle"},
    {"80.5", "size clearance mass angle"},
    {"80.125", "size clearance mass angle"},
    {"80.1250", "size clearance mass angle"},
    {"80.1255", ""},
    {"8e1", "size clearance count mass angle"},
    {"8E+1", "size clearance count mass angle"},
    {"800e-1", "size clearance count mass angle"},
    {"0", "clearance place count mass angle"},
    {"0.0", "clearance place count mass angle"},
    {"-0", "clearance place count mass angle"},
    {"-0.0", "clearance place count mass angle"},
    {"0e999999", "clearance place count mass angle"},
    {"1", "size clearance place count mass angle"},
    {"0.999", "clearance place mass angle"},
    {"0.001", "clearance place mass angle"},
    {"0.0001", ""},
    {"1e-3", "clearance place mass angle"},
    {"1e-4", ""},
    {"1e-400", ""},
    {"1e-999999999", ""},
    {"100", "size clearance count mass angle"},
    {"100.001", "size mass angle"},
    {"360", "size count mass angle"},
    {"360.001", "size mass"},
    {"1000", "size count mass"},
    {"1000.001", "size"},
    {"1001", "size"},
    {"3000", "size"},
    {"3000.001", ""},
    {"3001", ""},
    {"-1", "place angle"},
    {"-80", "angle"},
    {"-360", "angle"},
    {"-3001", ""},
    {"1e3", "size count mass"},
    {"1e4", ""},
    {"1e18", ""},
    {"1e19", ""},
    {"1e64", ""},
    {"1e308", ""},
    {"1e309", ""},
    {"1e999", ""},
    {"-1e999", ""},
    {"1e999999999", ""},
    {"1e999999999999999999", ""},
    {"-1e-999999999999999999", ""},
    {"9223372036854775807", ""},
    {"9223372036854775808", ""},
    {"18446744073709551616", ""},
    {"4294967376", ""},
    {"9999999999999999999999999999999999999999", ""},
    {"1.7976931348623157e308", ""},
    {"4.9e-324", ""},
    {"NaN", ""},
    {"Infinity", ""},
    {"-Infinity", ""},
    {"+80", ""},
    {"080", ""},
    {"80.", ""},
    {".8", ""},
    {"8_0", ""},
    {"0x50", ""},
    {"0x1p3", ""},
    {"80d", ""},
    {"80f", ""},
    {"80L", ""},
    {"8 0", ""},
    {"1e", ""},
    {"1e+", ""},
    {"--80", ""},
    {"80,5", ""},
    {"\uff18\uff10", ""},
    {"\u0668\u0660", ""},
    {"\u00bd", ""},
    {"8\u20090", ""},
    {"null", ""},
    {"true", ""},
    {"[80]", ""},
    {"{}", ""},
    {"\"\"", ""},
    {"\"80\"", ""},
    {"\"NaN\"", ""},
    {"\"1e3 mm\"", ""},
    {"\"0x1p3 mm\"", ""},
    {"\"80d\"", ""},
    {"\"80 mm\"", "size clearance"},
    {"\"8 cm\"", "size clearance"},
    {"\"3 1/2 in\"", "size clearance"},
    {"\"12,5 mm\"", "size clearance place"},
    {"\"1,234 mm\"", ""},
    {"\"-5 mm\"", "place"},
    {"\"350 g\"", "mass"},
    {"\"-350 g\"", ""},
    {"\"2000 kg\"", ""},
    {"\"0 mm\"", "clearance place"}
  };

  static List<Arguments> table() {
    List<Arguments> cases = new ArrayList<>();
    for (String[] row : TABLE) {
      for (String kind : FIELDS.keySet()) {
        cases.add(Arguments.of(kind, row[0], List.of(row[1].split(" ")).contains(kind)));
      }
    }
    return cases;
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("table")
  void acceptsOrRefusesAsWrittenDown(String kind, String number, boolean accepted) {
    String found = FIELDS.get(kind);
    String before = found.substring(0, Math.max(found.indexOf(": "), found.indexOf(": [") + 1) + 2);
    String after = found.endsWith(",") ? "," : "";
    String json = SmallStudio.json();
    int at = json.indexOf(found);
    assertThat(at).as("the field stands in the small studio").isPositive();

    ReadResult<?> result =
        SmallStudio.read(
            json.substring(0, at) + before + number + after + json.substring(at + found.length()));

    assertThat(result.problems())
        .as("%s %s", kind, result.problems())
        .hasSize(accepted ? 0 : result.problems().size());
    assertThat(result.found().isPresent()).as("%s", result.problems()).isEqualTo(accepted);
  }
}
