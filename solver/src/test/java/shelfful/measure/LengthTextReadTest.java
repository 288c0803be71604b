package shelfful.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** 1 in = 25.4 mm exactly (international yard and pound agreement, 1959). */
class LengthTextReadTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "89 mm | 89000",
        "89mm | 89000",
        "89 MM | 89000",
        "8.9cm | 89000",
        "8,9 cm | 89000",
        "3.5in | 88900",
        "3 1/2 in | 88900",
        "3 1/2\" | 88900",
        "3-1/2\" | 88900",
        "3 1/2\u2033 | 88900",
        "3 1/2\u201d | 88900",
        "3 1/2 inches | 88900",
        "1/2 inch | 12700",
        "1/16 in | 1588",
        "1/64 in | 397",
        "12.7 mm | 12700",
        "12,75 mm | 12750",
        "0,125 in | 3175",
        "1.375 in | 34925",
        "0 mm | 0",
        "-45 mm | -45000",
        "+45 mm | 45000",
        "-1/2 in | -12700",
        "0.0005 mm | 1",
        "0.0004 mm | 0"
      })
  void readsWhatPeopleType(String text, long micrometres) {
    assertThat(LengthText.readWithUnit(text).value()).contains(new Length(micrometres));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "in",
        "\"",
        "12,5,0 mm",
        "12.5.0 mm",
        "1,234 mm",
        "12,345 mm",
        "1.234,5 mm",
        "1'000 mm",
        "1 000 mm",
        "1e3 mm",
        "0x1p3",
        "12d",
        "NaN",
        "NaN mm",
        "Infinity mm",
        "- 5 mm",
        "--5 mm",
        "\u22125 mm",
        ".5 mm",
        "5. mm",
        "5 m",
        "5 ft",
        "5' 6\"",
        "\uff18\uff10 mm",
        "\u0668\u0660 mm",
        "1\u2009000 mm",
        "3 1/3 in",
        "3 2/2 in",
        "1/0 in",
        "0/2 in",
        "3 1/128 in",
        "1/2 mm",
        "3 1/2",
        "3 - 1/2 in",
        "\u00bd in",
        "89 mm mm",
        "89 mm tall",
        "0000000000000089 mm",
        "89",
        "8\u0000 mm",
        "89\nmm\n5"
      })
  void refusesWhatIsNoCertainLength(String text) {
    assertThat(LengthText.readWithUnit(text)).isInstanceOf(TextReading.Refused.class);
  }

  @Test
  void takesAnUnitThatIsToldForATextThatNamesNone() {
    assertThat(LengthText.read("3.5", LengthUnit.INCHES).value()).contains(new Length(88_900));
    assertThat(LengthText.read("3 1/2", LengthUnit.INCHES).value()).contains(new Length(88_900));
    assertThat(LengthText.read("8,9", LengthUnit.CENTIMETRES).value()).contains(new Length(89_000));
    assertThat(LengthText.read("89 mm", LengthUnit.INCHES).value()).contains(new Length(89_000));
    assertThat(LengthText.read("3 1/2", LengthUnit.MILLIMETRES).value()).isEmpty();
  }

  @Test
  void saysWhatAGroupedNumberMayMean() {
    assertThat(LengthText.readWithUnit("1,234 mm"))
        .isEqualTo(
            new TextReading.Refused<Length>(
                "\"1,234\" may mean 1.234 or 1234.", "Write 1.234 or 1234."));
  }

  @Test
  void neverReadsADecimalCommaAsGrouping() {
    assertThat(LengthText.readWithUnit("12,5 mm").value()).contains(new Length(12_500));
  }

  @Test
  void readsBackWhatItWritesToTheWrittenTenth() {
    for (LengthUnit unit : LengthUnit.values()) {
      long exact = unit == LengthUnit.INCHES ? 25_400 / 16 : 100;
      for (long micrometres = -3_000_000; micrometres <= 3_000_000; micrometres += 1_237) {
        String written = LengthText.write(new Length(micrometres), unit);
        long read = LengthText.readWithUnit(written).value().orElseThrow().micrometres();
        assertThat(Math.abs(read - micrometres)).as(written).isLessThanOrEqualTo(exact / 2 + 1);
        assertThat(LengthText.write(new Length(read), unit)).isEqualTo(written);
      }
    }
  }

  @Test
  void readsTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG", "tr-TR", "hi-IN-u-nu-deva", "en-US"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(LengthText.readWithUnit("3.5 IN").value()).contains(new Length(88_900));
        assertThat(LengthText.write(new Length(88_940), LengthUnit.MILLIMETRES))
            .isEqualTo("88.9 mm");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
