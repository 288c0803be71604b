package shelfful.ui.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.drawing.PaperSize;
import shelfful.measure.LengthUnit;
import shelfful.ui.words.Language;

class SettingsTest {
  private static final Settings PLAIN = Settings.usual(Locale.ROOT);

  @TempDir private Path folder;

  @Test
  void languageUnitNumbersAndPaperAreEachChosenApart() {
    for (Language language : Language.values()) {
      for (LengthUnit unit : LengthUnit.values()) {
        for (NumberStyle numbers : NumberStyle.values()) {
          for (PaperSize paper : PaperSize.values()) {
            Settings mixed = PLAIN.with(language).with(unit).with(numbers).with(paper).with(175);
            assertThat(SettingsText.read(SettingsText.written(mixed), PLAIN)).isEqualTo(mixed);
          }
        }
      }
    }
  }

  /** CLDR 44: the decimal sign of each language, paper and measurement system of each country. */
  @ParameterizedTest
  @CsvSource({
    "en-US, ENGLISH, INCHES, DOT, LETTER",
    "en-GB, ENGLISH, MILLIMETRES, DOT, A4",
    "de-DE, GERMAN, MILLIMETRES, COMMA, A4",
    "de-CH, GERMAN, MILLIMETRES, DOT, A4",
    "tr-TR, ENGLISH, MILLIMETRES, COMMA, A4",
    "ja-JP, ENGLISH, MILLIMETRES, DOT, A4",
    "fr-CA, ENGLISH, MILLIMETRES, COMMA, LETTER"
  })
  void aFirstStartTakesWhatIsUsualInTheCountry(
      String tag, Language language, LengthUnit unit, NumberStyle numbers, PaperSize paper) {
    Settings usual = Settings.usual(Locale.forLanguageTag(tag));
    assertThat(usual).isEqualTo(new Settings(language, unit, numbers, paper, Theme.LIGHT, 100));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar", "ja-JP", "th-TH-u-nu-thai"})
  void theFileIsTheSameUnderEveryLocaleOfTheMachine(String tag) {
    byte[] expected = SettingsText.written(PLAIN.with(LengthUnit.INCHES));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(SettingsText.written(PLAIN.with(LengthUnit.INCHES))).isEqualTo(expected);
      assertThat(SettingsText.read(expected, PLAIN).unit()).isEqualTo(LengthUnit.INCHES);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aDamagedFileStillDoesItsBest() {
    byte[] damaged =
        "unit = furlongs\n=\nscale = 1000\ntheme = dark\n\u0000\u0001"
            .getBytes(StandardCharsets.UTF_8);
    assertThat(SettingsText.read(damaged, PLAIN)).isEqualTo(PLAIN.with(Theme.DARK));
  }

  @Test
  void everyChangeIsOnTheDiskAtOnceAndReadAtTheNextStart() throws IOException {
    Path nested = folder.resolve("a").resolve("b");
    SettingsViewModel model = SettingsViewModel.in(nested, PLAIN);
    model.change(one -> one.with(Theme.DARK));
    model.change(one -> one.with(LengthUnit.CENTIMETRES));
    assertThat(model.trouble().get()).isEmpty();
    SettingsViewModel later = SettingsViewModel.in(nested, PLAIN);
    assertThat(later.settings().get())
        .isEqualTo(PLAIN.with(Theme.DARK).with(LengthUnit.CENTIMETRES));
    try (var files = Files.list(nested)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("settings.txt", "settings.txt.bak");
    }
  }

  @Test
  void settingsThatCannotBeSavedStillCountAndAreTold() throws IOException {
    Path blocked = Files.write(folder.resolve("file"), new byte[0]);
    SettingsViewModel model = SettingsViewModel.in(blocked, PLAIN);
    model.change(one -> one.with(200));
    assertThat(model.settings().get().scale()).isEqualTo(200);
    assertThat(model.trouble().get()).contains("settings.txt");
  }

  @Test
  void theFolderIsWhereEachSystemWantsIt() {
    assertThat(SettingsFolder.of("Linux", "/home/p", Map.of("XDG_CONFIG_HOME", "/cfg")))
        .isEqualTo(Path.of("/cfg/shelfful"));
    assertThat(SettingsFolder.of("Linux", "/home/p", Map.of("XDG_CONFIG_HOME", "rel/cfg")))
        .isEqualTo(Path.of("/home/p/.config/shelfful"));
    assertThat(SettingsFolder.of("Linux", "/home/p", Map.of()))
        .isEqualTo(Path.of("/home/p/.config/shelfful"));
    assertThat(SettingsFolder.of("Mac OS X", "/Users/p", Map.of()))
        .isEqualTo(Path.of("/Users/p/Library/Application Support/Shelfful"));
    assertThat(SettingsFolder.of("Windows 11", "/u", Map.of("APPDATA", "/u/r")))
        .isEqualTo(Path.of("/u/r/Shelfful"));
    assertThat(SettingsFolder.of("Windows 11", "/u", Map.of()))
        .isEqualTo(Path.of("/u/AppData/Roaming/Shelfful"));
  }
}
