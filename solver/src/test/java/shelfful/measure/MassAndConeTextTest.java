package shelfful.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MassAndConeTextTest {

  /** 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "350 g|350",
        "0.35 kg|350",
        "0,35kg|350",
        "1 lb|454",
        "1.5 LB|680",
        "2 lbs|907",
        "0 g|0",
        "0.4 g|0",
        "0.5 g|1"
      })
  void readsMasses(String text, long grams) {
    assertThat(MassText.read(text).value()).contains(new Mass(grams));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "350",
        "g",
        "-1 g",
        "1,000 g",
        "1e3 g",
        "9 oz",
        "5 stone",
        "NaN kg",
        "\uff11 kg",
        "1 kg 200 g"
      })
  void refusesWhatIsNoCertainMass(String text) {
    assertThat(MassText.read(text)).isInstanceOf(TextReading.Refused.class);
  }

  @ParameterizedTest
  @CsvSource({
    "06,06",
    "6,6",
    "cone 6,6",
    "Cone 06,06",
    "\u039406,06",
    "^6,6",
    "5.5,5.5",
    "022,022",
    "14,14"
  })
  void readsConesWithoutTouchingTheirZero(String text, String number) {
    assertThat(ConeText.read(text).value()).contains(new Cone(number));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "0", "00", "006", "15", "023", "6.0", "-6", "six", "06a", "\uff16", "6 7", "1e1"
      })
  void refusesWhatIsNoCone(String text) {
    assertThat(ConeText.read(text)).isInstanceOf(TextReading.Refused.class);
  }
}
