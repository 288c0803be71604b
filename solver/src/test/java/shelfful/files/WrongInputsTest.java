package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shelfful.studio.Studio;

/** Every wrong file in the folder gives the problem that its line in the index foretells. */
class WrongInputsTest {
  private static final Path FOLDER = Path.of("src/test/resources/shelfful/files/wrong");

  record Expected(String file, String outcome, String where, String field, String word) {
    @Override
    public String toString() {
      return file;
    }
  }

  static List<Expected> index() throws IOException {
    return Files.readAllLines(FOLDER.resolve("index.tsv")).stream()
        .skip(1)
        .map(line -> line.split("\t", -1))
        .map(cells -> new Expected(cells[0], cells[1], cells[2], cells[3], cells[4]))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("index")
  void namesPlaceFieldAndFault(Expected expected) {
    ReadResult<?> result = read(expected.file());

    assertThat(result.found().isPresent() ? "read" : "refused").isEqualTo(expected.outcome());
    assertThat(result.problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(expected.file());
              assertThat(place(problem, expected)).isEqualTo(expected.where());
              assertThat(problem.field()).isEqualTo(expected.field());
              assertThat(problem.sentence()).contains(expected.word());
            });
  }

  @ParameterizedTest
  @MethodSource("index")
  void speaksToPeople(Expected expected) {
    for (Problem problem : read(expected.file()).problems()) {
      assertThat(problem.sentence())
          .doesNotContainPattern("Exception|Error|jackson|apache|java\\.|\\bat [a-z]+\\.[a-z]+\\.")
          .doesNotContainPattern("[\\p{Cntrl}\u202e]")
          .hasSizeLessThan(400);
      assertThat(problem.wrong()).matches("(?s)\\S.*\\.");
      assertThat(problem.mend()).matches("(?s)|\\S.*[.?]");
    }
  }

  @ParameterizedTest
  @MethodSource("index")
  void findsNoFaultInTheRest(Expected expected) {
    assertThat(read(expected.file()).problems().size()).isBetween(1, 4);
  }

  @Test
  void everyFileOfTheFolderIsInTheIndex() throws IOException {
    Set<String> inFolder = new TreeSet<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      files.map(file -> file.getFileName().toString()).forEach(inFolder::add);
    }
    inFolder.remove("index.tsv");
    Set<String> inIndex = new TreeSet<>();
    index().forEach(expected -> inIndex.add(expected.file()));

    assertThat(inFolder).hasSizeGreaterThan(60).isEqualTo(inIndex);
  }

  @Test
  void keepsTheGoodRowsOfAListWithABadOne() {
    assertThat(
            BatchListReader.read(FOLDER.resolve("list-quantity-negative.csv"), studio())
                .found()
                .orElseThrow())
        .extracting(batch -> batch.id())
        .containsExactly("B1");
  }

  /**
   * A syntax fault is only foretold as far as the index says: {@code line}, or {@code line 2,
   * column}.
   */
  private static String place(Problem problem, Expected expected) {
    boolean syntax = expected.where().startsWith("line") && expected.file().endsWith(".json");
    return syntax && problem.where().startsWith(expected.where())
        ? expected.where()
        : problem.where();
  }

  private static ReadResult<?> read(String file) {
    return file.startsWith("studio-")
        ? StudioReader.read(FOLDER.resolve(file))
        : BatchListReader.read(FOLDER.resolve(file), studio());
  }

  private static Studio studio() {
    return SmallStudio.studio();
  }
}
