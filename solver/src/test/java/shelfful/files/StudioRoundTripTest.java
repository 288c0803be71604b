package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.studio.Clearances;
import shelfful.studio.Studio;
import shelfful.ware.Lug;
import shelfful.ware.Profile;

class StudioRoundTripTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../demo-data/studio.json",
        "src/test/resources/shelfful/files/small-studio.json",
        "src/test/resources/shelfful/files/every-shape-studio.json"
      })
  void readsBackWhatItWrote(String file) {
    ReadResult<Studio> result = StudioReader.read(Path.of(file));
    assertThat(result.problems()).isEmpty();
    Studio studio = result.found().orElseThrow();

    byte[] once = StudioWriter.bytes(studio);
    Studio again = StudioReader.read("again.json", once).found().orElseThrow();

    assertThat(again).isEqualTo(studio);
    assertThat(StudioWriter.bytes(again)).isEqualTo(once);
  }

  @Test
  void writesTheSameBytesInEveryLocale() {
    byte[] here = StudioWriter.bytes(SmallStudio.demo());
    Locale before = Locale.getDefault();
    try {
      for (String tag :
          new String[] {"de-DE", "ar-EG", "tr-TR", "hi-IN-u-nu-deva", "th-TH-u-ca-buddhist"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(StudioWriter.bytes(SmallStudio.demo())).as(tag).isEqualTo(here);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void writesLinesThatCanBeComparedAndNoCarriageReturns() {
    String text = new String(StudioWriter.bytes(SmallStudio.demo()), StandardCharsets.UTF_8);

    assertThat(text)
        .startsWith("{\n  \"format\": \"shelfful studio\",\n  \"version\": 1,\n")
        .endsWith("}\n");
    assertThat(text).doesNotContain("\r").contains("\"length\": 12.7,").doesNotContain("E+");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(140));
  }

  @Test
  void readsLengthsAndMassesWithTheirUnits() {
    Studio studio =
        SmallStudio.read(
                SmallStudio.json()
                    .replace("\"height\": 80", "\"height\": \"3 1/2 in\"")
                    .replace("\"mass\": 0.25", "\"mass\": \"9 g\""))
            .found()
            .orElseThrow();

    assertThat(studio.form("cup").orElseThrow().profile().height()).isEqualTo(new Length(88_900));
    assertThat(studio.form("cup").orElseThrow().mass()).isEqualTo(new Mass(9));
  }

  @Test
  void addsTheBodyToHowFarAHandleSticksOut() {
    Profile cup = SmallStudio.studio().form("cup").orElseThrow().profile();

    // 75 mm across and 28 mm of handle: 37.5 + 28 from the axis.
    assertThat(cup.lugs()).extracting(Lug::reach).containsExactly(new Length(65_500));
  }

  @Test
  void addsTheWidestBandAtTheHandlesHeights() {
    String bowlWithLug =
        SmallStudio.json()
            .replace(
                "\"mass\": 0.4",
                "\"lugs\": [{\"name\": \"ear\", \"direction\": 90, \"sticksOut\": 10, \"width\": 12,"
                    + " \"from\": 5, \"to\": 20}], \"mass\": 0.4");

    Profile bowl =
        SmallStudio.read(bowlWithLug).found().orElseThrow().form("bowl").orElseThrow().profile();

    // The band over it, 150 mm across, begins where the ear ends.
    assertThat(bowl.lugs()).extracting(Lug::reach).containsExactly(new Length(55_000));
  }

  @Test
  void takesCommonPracticeForWhatIsNotSaid() {
    Studio studio = SmallStudio.studio();

    assertThat(studio.rules().clearances()).isEqualTo(Clearances.COMMON_PRACTICE);
    assertThat(studio.rules().mostPostPieces()).isEqualTo(2);
  }

  @Test
  void keepsASawCutOfNothing() {
    Studio studio =
        SmallStudio.read(SmallStudio.json().replace("\"sawCut\": 3", "\"sawCut\": 0"))
            .found()
            .orElseThrow();

    assertThat(studio.shelf("half").orElseThrow().outline().toString()).contains("sawCut=0.0 mm");
  }
}
