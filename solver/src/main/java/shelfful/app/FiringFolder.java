package shelfful.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import shelfful.files.FigureTable;
import shelfful.files.SaveFailed;
import shelfful.files.ShortText;
import shelfful.files.UnpackingNote;
import shelfful.inspect.InspectedLoad;
import shelfful.record.FiringRecord;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/**
 * The folder of a pottery's firings as the desk works with it: what goes wrong is a sentence, never
 * an exception. Beside each firing lies the plan it was loaded from, so that its ware can be marked
 * on the drawing of its shelves days later; and one file holds the potter's own list of causes.
 */
public final class FiringFolder {
  private static final String CAUSES = "causes.txt";

  private final Path folder;
  private final KeepFirings firings;

  public FiringFolder(Path folder) {
    this.folder = folder;
    this.firings = new KeepFirings(folder);
  }

  /** Where it is; it may not be there yet. */
  public Path path() {
    return folder;
  }

  /** Every firing that is kept; none where the folder is not there. */
  public KeepFirings.Kept all() {
    if (!Files.isDirectory(folder)) {
      return new KeepFirings.Kept(List.of(), List.of());
    }
    try {
      return firings.all();
    } catch (IOException unreadable) {
      return new KeepFirings.Kept(
          List.of(), List.of("The folder " + folder + " cannot be read; check its permissions."));
    }
  }

  /**
   * Begins the record of a plan that is fired, with a copy of the plan beside it. One of that plan
   * and day that is there already is left as it is.
   *
   * @param limit what no load of its list can exceed, where it is known
   */
  public Opened<UnpackedFiring> begin(InspectedLoad load, LocalDate day, Optional<Integer> limit) {
    try {
      Opened<UnpackedFiring> begun = KeepFirings.open(firings.begin(load, day, limit));
      if (begun instanceof Opened.Ready<UnpackedFiring> ready) {
        Path plan = plan(ready.value().record().id());
        Optional<String> trouble =
            Files.exists(plan) ? Optional.empty() : SaveALoad.plan(load, plan);
        return new Opened.Ready<>(ready.value(), trouble.stream().toList());
      }
      return begun;
    } catch (SaveFailed failed) {
      return new Opened.Refused<>(false, List.of(failed.sentence()));
    } catch (IOException failed) {
      return new Opened.Refused<>(
          false, List.of("The folder " + folder + " could not be made; choose another."));
    }
  }

  /** Saves what was noted of a firing; empty, or why it could not be saved. */
  public Optional<String> note(FiringRecord record) {
    try {
      firings.note(record);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }

  /** Adds results of pieces to a firing; empty, or why they could not be saved. */
  public Optional<String> add(FiringRecord record, List<PieceResult> results) {
    try {
      firings.add(record, results);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }

  /** The results that the text of a phone's note holds; all of them or none. */
  public static Opened<List<PieceResult>> fromNote(String name, byte[] note, FiringRecord record) {
    return Opened.of(UnpackingNote.read(name, note, record));
  }

  /** The plan a firing was loaded from, where its copy is there and still sound. */
  public Optional<InspectedLoad> planOf(FiringRecord record) {
    Path file = plan(record.id());
    return Files.isRegularFile(file)
            && OpenAPlan.open(file) instanceof Opened.Ready<InspectedLoad> ready
        ? Optional.of(ready.value())
        : Optional.empty();
  }

  private Path plan(String id) {
    return folder.resolve(id + ".plan.json");
  }

  /** The potter's own causes, a line each; empty where she keeps no list. */
  public List<String> causes() {
    return KeepAFile.read(folder.resolve(CAUSES))
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .map(text -> text.lines().map(String::strip).filter(FiringFolder::isSound).toList())
        .orElse(List.of());
  }

  /** Keeps the list of causes; empty, or why it could not be saved. */
  public Optional<String> keepCauses(List<String> causes) {
    String text = String.join("\n", causes.stream().filter(FiringFolder::isSound).toList()) + "\n";
    return KeepAFile.save(folder.resolve(CAUSES), text.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether a text may be kept as a cause or a program; see {@link ShortText}. */
  public static boolean isSound(String text) {
    return ShortText.isSound(text);
  }

  /** The most characters of such a text. */
  public static int longest() {
    return ShortText.LONGEST;
  }

  /** The bytes of a table of figures for a spreadsheet; no cell can run as a formula there. */
  public static byte[] table(List<String> headings, List<List<String>> rows) {
    return FigureTable.bytes(headings, rows);
  }
}
