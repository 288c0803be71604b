package shelfful.ui.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Path BUNDLES =
      Path.of("src", "main", "resources", "shelfful", "ui", "words");

  /** A key asked for in the code: a call of {@code of}, or one of the helpers that take a key. */
  private static final Pattern KEY = Pattern.compile("\"([a-z][A-Za-z]*(?:\\.[A-Za-z0-9_]+)+)\"");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern PLACE = Pattern.compile("\\{([0-9]+)");

  private static Properties bundle(String name) throws IOException {
    Properties words = new Properties();
    try (var text = Files.newBufferedReader(BUNDLES.resolve(name))) {
      words.load(text);
    }
    return words;
  }

  private static List<Path> sources() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static String code(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  @Test
  void everyLanguageHasTheSameKeysWithTheSamePlaces() throws IOException {
    Properties english = bundle("words.properties");
    Properties german = bundle("words_de.properties");
    assertThat(german.stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
    for (String key : english.stringPropertyNames()) {
      assertThat(places(german.getProperty(key)))
          .as(key)
          .isEqualTo(places(english.getProperty(key)));
    }
  }

  private static Set<String> places(String pattern) {
    Set<String> places = new TreeSet<>();
    Matcher matcher = PLACE.matcher(pattern);
    while (matcher.find()) {
      places.add(matcher.group(1));
    }
    return places;
  }

  @Test
  void everyKeyAskedForInTheCodeHasWords() throws IOException {
    Set<String> known = bundle("words.properties").stringPropertyNames();
    Set<String> prefixes = new TreeSet<>();
    known.forEach(key -> prefixes.add(key.substring(0, key.indexOf('.') + 1)));
    List<String> missing = new ArrayList<>();
    for (Path file : sources()) {
      Matcher matcher = KEY.matcher(code(file));
      while (matcher.find()) {
        String key = matcher.group(1);
        boolean ofWords = prefixes.contains(key.substring(0, key.indexOf('.') + 1));
        if (ofWords && !known.contains(key) && !key.matches(".*\\.(css|json|csv|txt|properties)")) {
          missing.add(file.getFileName() + ": " + key);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  /**
   * Text for people has a space between words or begins with a capital letter. What the program
   * says to its makers in exceptions, keys of the keyboard, patterns and styles are none.
   */
  @Test
  void noTextForPeopleStandsInTheCode() {
    List<String> texts = new ArrayList<>();
    for (Path file : sources()) {
      for (String statement : withoutRemarks(code(file)).split("[;{}]")) {
        if (!statement.contains("Exception(")
            && !statement.contains("Pattern")
            && !statement.contains("matches(")
            && !statement.contains("@SuppressWarnings")) {
          texts.addAll(literals(file, statement));
        }
      }
    }
    assertThat(texts).isEmpty();
  }

  private static String withoutRemarks(String code) {
    return code.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
  }

  private static List<String> literals(Path file, String statement) {
    List<String> texts = new ArrayList<>();
    Matcher matcher = LITERAL.matcher(statement);
    while (matcher.find()) {
      String text = matcher.group(1);
      boolean sentence = text.matches(".*\\p{L}{2,} \\p{L}{2,}.*");
      boolean named = text.matches("\\p{Lu}\\p{Ll}{2,}.*");
      if ((sentence || named) && !isForTheMachine(text)) {
        texts.add(file.getFileName() + ": " + text);
      }
    }
    return texts;
  }

  /** Key names, names of folders and environment, style rules, ends that keys are made of. */
  private static boolean isForTheMachine(String text) {
    return text.startsWith("Shortcut+")
        || Set.of("Text", "Mend", "Shape", "Diameter", "Width", "Depth").contains(text)
        || text.contains("-fx-")
        || Set.of("AppData", "Roaming", "Shelfful", "Library", "Application Support", "DejaVu Sans")
            .contains(text);
  }

  @Test
  void thePatternsCanAllBeFilledIn() throws IOException {
    for (Language language : Language.values()) {
      Words words = Words.in(language);
      for (String key : words.keys()) {
        String said = said(words, key);
        assertThat(said).as(language + " " + key).doesNotContain("{").isNotBlank();
      }
    }
    assertThat(new MessageFormat("it''s").format(new Object[0])).isEqualTo("it's");
  }

  /** Texts or numbers, as the pattern wants. */
  private static String said(Words words, String key) {
    try {
      return words.of(key, "A", "B", "C", "D", "E", "F");
    } catch (IllegalArgumentException numbersWanted) {
      return words.of(key, 1, 2, 3, 4, 5, 6);
    }
  }

  @Test
  void oneAndManyAreSaidDifferently() {
    assertThat(Words.english().of("batches.counts", 1, 3)).isEqualTo("1 batch, 3 pieces");
    assertThat(Words.english().of("batches.counts", 0, 0)).isEqualTo("No batches, no pieces");
    assertThat(Words.in(Language.GERMAN).of("paste.counts", 1, 2))
        .isEqualTo("1 Zeile kann übernommen werden, 2 sind falsch.");
  }

  @Test
  void thePseudoLanguageIsLongerAndKeepsThePlaces() {
    String plain = Words.english().of("sheet.under", "89 mm", 2, 5);
    String strange = Words.in(Language.PSEUDO).of("sheet.under", "89 mm", 2, 5);
    assertThat(strange).contains("89 mm").startsWith("[").endsWith("]");
    assertThat(strange.length()).isGreaterThan(plain.length() * 5 / 4);
    assertThat(Language.offered()).doesNotContain(Language.PSEUDO);
  }
}
