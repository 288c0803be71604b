package shelfful.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicSaveTest {
  private static final byte[] OLD = "the old version".getBytes(StandardCharsets.UTF_8);
  private static final byte[] NEW =
      "the new version, which is longer".getBytes(StandardCharsets.UTF_8);

  /** More than any save asks of the disk. */
  private static final int EVERY_CALL = 40;

  @TempDir private Path folder;

  @Test
  void savesAFileThatWasNotThere() throws Exception {
    AtomicSave.save(file(), NEW);

    assertThat(file()).hasBinaryContent(NEW);
    assertThat(names()).containsExactly("studio.json");
  }

  @Test
  void keepsTheVersionBefore() throws Exception {
    Files.write(file(), OLD);

    AtomicSave.save(file(), NEW);

    assertThat(file()).hasBinaryContent(NEW);
    assertThat(folder.resolve("studio.json.bak")).hasBinaryContent(OLD);
    assertThat(names()).containsExactly("studio.json", "studio.json.bak");
  }

  @Test
  void keepsTheOlderVersionWhenNothingChanged() throws Exception {
    Files.write(file(), OLD);
    AtomicSave.save(file(), NEW);

    AtomicSave.save(file(), NEW);

    assertThat(folder.resolve("studio.json.bak")).hasBinaryContent(OLD);
    assertThat(names()).hasSize(2);
  }

  @Test
  void replacesTheFileBehindALinkAndKeepsTheLink() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolve("synchronised"));
    Path behind = Files.write(elsewhere.resolve("real.json"), OLD);
    Path between =
        Files.createSymbolicLink(
            folder.resolve("between.json"), Path.of("synchronised", "real.json"));
    Files.createSymbolicLink(file(), between);

    AtomicSave.save(file(), NEW);

    assertThat(file()).isSymbolicLink();
    assertThat(behind).hasBinaryContent(NEW);
    assertThat(elsewhere.resolve("real.json.bak")).hasBinaryContent(OLD);
  }

  @Test
  void saysWhenTheFolderIsNotThere() {
    assertThatThrownBy(() -> AtomicSave.save(folder.resolve("gone").resolve("a.json"), NEW))
        .isInstanceOf(SaveFailed.class)
        .hasMessageContaining("a.json was not saved: its folder is not there.");
  }

  @Test
  void saysWhenAFolderIsInTheWay() throws Exception {
    Files.createDirectory(file());

    assertThatThrownBy(() -> AtomicSave.save(file(), NEW))
        .hasMessageContaining("a folder of this name is in the way");
  }

  @Test
  void waitsForAScannerThatHoldsTheFile() throws Exception {
    Files.write(file(), OLD);
    FaultyDisk disk = new FaultyDisk().denyReplaces(5);

    new AtomicSave(disk).put(file(), NEW);

    assertThat(file()).hasBinaryContent(NEW);
    assertThat(disk.paused()).isBetween(100L, 2_500L);
  }

  @Test
  void keepsBothVersionsWhenTheFileStaysHeld() throws Exception {
    Files.write(file(), OLD);
    FaultyDisk disk = new FaultyDisk().denyReplacesOf(file());

    assertThatThrownBy(() -> new AtomicSave(disk).put(file(), NEW))
        .isInstanceOf(SaveFailed.class)
        .hasMessageContaining("studio.json was not replaced")
        .hasMessageContaining("The old version is untouched")
        .hasMessageContaining(names().get(0));
    assertThat(file()).hasBinaryContent(OLD);
    assertThat(folder.resolve(names().get(0))).hasBinaryContent(NEW);
    assertThat(disk.paused()).isLessThan(2_500);
  }

  @Test
  void saysWhenTheDiskCannotReplaceInOneStep() throws Exception {
    Files.write(file(), OLD);
    Path target = file();
    SavingDisk disk =
        new FaultyDisk() {
          @Override
          public void replace(Path from, Path to) throws IOException {
            if (to.equals(target)) {
              throw new AtomicMoveNotSupportedException(
                  from.toString(), to.toString(), "two disks");
            }
            super.replace(from, to);
          }
        };

    assertThatThrownBy(() -> new AtomicSave(disk).put(file(), NEW))
        .hasMessageContaining("cannot replace a file in one step");
    assertThat(file()).hasBinaryContent(OLD);
  }

  @Test
  void survivesAFailureAtEveryCall() throws Exception {
    int failures = 0;
    for (int call = 1; call <= EVERY_CALL; call++) {
      Files.write(file(), OLD);
      try {
        new AtomicSave(new FaultyDisk().failAt(call)).put(file(), NEW);
        assertThat(file()).hasBinaryContent(NEW);
      } catch (SaveFailed e) {
        failures++;
        assertThat(file()).as("call %d", call).hasBinaryContent(OLD);
        assertThat(e.sentence())
            .startsWith("studio.json was not ")
            .endsWith(".")
            .doesNotContain("Exception");
      }
    }
    assertThat(failures).isGreaterThan(5);
  }

  @Test
  void losesNothingWhenThePowerFailsAtAnyCall() throws Exception {
    int cuts = 0;
    for (int call = 1; call <= EVERY_CALL; call++) {
      Files.write(file(), OLD);
      try {
        new AtomicSave(new FaultyDisk().cutPowerAt(call)).put(file(), NEW);
      } catch (PowerCut e) {
        cuts++;
      }
      assertThat(Files.readAllBytes(file())).as("call %d", call).isIn(OLD, NEW);
    }
    assertThat(cuts).isGreaterThan(5);
  }

  @Test
  void neverTouchesAFileThatIsInTheWayOfItsTemporaryOne() {
    assertThatThrownBy(() -> new LocalDisk().writeNew(Files.write(file(), OLD), NEW))
        .isInstanceOf(IOException.class);
    assertThat(file()).hasBinaryContent(OLD);
  }

  private Path file() {
    return folder.resolve("studio.json");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
