package shelfful.ui.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileEndingTest {
  private final List<Path> asked = new ArrayList<>();
  private boolean answer;

  @TempDir private Path folder;

  private FileEnding ending(String... endings) {
    return new FileEnding(
        List.of(endings),
        file -> {
          asked.add(file);
          return answer;
        });
  }

  @Test
  void aNameThatEndsAsItsKindDoesIsLeftAsItWasTyped() throws IOException {
    for (String name : List.of("a.csv", "a.json", "A.CSV")) {
      Path typed = Files.writeString(folder.resolve(name), "the system asked already");
      assertThat(ending(".csv", ".json").complete(typed)).contains(typed);
    }
    assertThat(ending(".work.json").complete(folder.resolve("b.json")))
        .contains(folder.resolve("b.json"));
    assertThat(asked).isEmpty();
  }

  @Test
  void anyOtherNameIsGivenTheFirstEnding() {
    assertThat(ending(".csv", ".json").complete(folder.resolve("june")))
        .contains(folder.resolve("june.csv"));
    assertThat(ending(".work.json").complete(folder.resolve("v1.2")))
        .contains(folder.resolve("v1.2.work.json"));
    assertThat(asked).isEmpty();
  }

  @Test
  void aFileThatTheEndingLeadsToIsReplacedOnlyWhenItMayBe() throws IOException {
    Path there = Files.writeString(folder.resolve("june.pdf"), "of last year");
    assertThat(ending(".pdf").complete(folder.resolve("june"))).isEmpty();
    answer = true;
    assertThat(ending(".pdf").complete(folder.resolve("june"))).contains(there);
    assertThat(asked).containsExactly(there, there);
  }
}
