package shelfful.app;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import shelfful.drawing.PlanMark;
import shelfful.files.FiringRecordReader;
import shelfful.files.FiringRecordWriter;
import shelfful.files.Problem;
import shelfful.files.ReadResult;
import shelfful.files.SaveFailed;
import shelfful.files.UnpackingLog;
import shelfful.files.UnpackingNote;
import shelfful.inspect.InspectedLoad;
import shelfful.record.FiringRecord;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;

/**
 * The firings of a pottery, kept in one folder: for each a file that says what stood in it and how
 * it went, and beside it a file that results are added to, line by line.
 */
public final class KeepFirings {
  private static final String FIRING = ".firing.json";
  private static final String UNPACKING = ".unpacking.jsonl";

  private final Path folder;

  public KeepFirings(Path folder) {
    this.folder = folder;
  }

  /**
   * Everything that is kept.
   *
   * @param firings in the order of their days
   * @param notes sentences about files and lines that were passed over; may be empty
   */
  public record Kept(List<UnpackedFiring> firings, List<String> notes) {
    /** Takes its own copies. */
    public Kept {
      firings = List.copyOf(firings);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Begins the record of a plan that is fired. One of that plan and day that is there already is
   * left as it is.
   *
   * @param limit what no load of its list can exceed, where it is known
   * @return the file it is kept in
   * @throws SaveFailed when it cannot be saved
   */
  public Path begin(InspectedLoad load, LocalDate day, Optional<Integer> limit)
      throws SaveFailed, IOException {
    Files.createDirectories(folder);
    FiringRecord record = FiringRecord.of(load, day, PlanMark.of(load.load()).shortForm(), limit);
    Path file = file(record.id());
    if (Files.notExists(file)) {
      FiringRecordWriter.write(record, file);
    }
    return file;
  }

  /** Saves what was noted of a firing. */
  public void note(FiringRecord record) throws SaveFailed {
    FiringRecordWriter.write(record, file(record.id()));
  }

  /** Adds results of pieces to a firing; later ones of the same piece hold. */
  public void add(FiringRecord record, List<PieceResult> results) throws SaveFailed {
    UnpackingLog.append(results, log(record.id()));
  }

  /** The results a note from a phone holds; all of them or none. */
  public static Opened<List<PieceResult>> fromNote(Path note, FiringRecord record) {
    return opened(UnpackingNote.read(note, record));
  }

  /** Opens the file of one firing with its results. */
  public static Opened<UnpackedFiring> open(Path file) {
    ReadResult<FiringRecord> record = FiringRecordReader.read(file);
    if (record.found().isEmpty()) {
      return new Opened.Refused<>(false, sentences(record));
    }
    String name = file.getFileName().toString();
    Path log = file.resolveSibling(name.replace(FIRING, "") + UNPACKING);
    ReadResult<List<PieceResult>> results = UnpackingLog.read(log);
    List<String> notes = new ArrayList<>(sentences(record));
    notes.addAll(sentences(results));
    return new Opened.Ready<>(
        new UnpackedFiring(record.found().get(), results.found().orElse(List.of())), notes);
  }

  /** Every firing of the folder; what cannot be read is passed over and told. */
  public Kept all() throws IOException {
    if (!Files.isDirectory(folder)) {
      String sentence =
          "There is no folder " + folder + ". A firing is begun with: record begin PLAN.";
      return new Kept(List.of(), List.of(sentence));
    }
    TreeSet<Path> files = new TreeSet<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + FIRING)) {
      found.forEach(files::add);
    }
    List<UnpackedFiring> firings = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    for (Path file : files) {
      Opened<UnpackedFiring> opened = open(file);
      if (opened instanceof Opened.Ready<UnpackedFiring> ready) {
        firings.add(ready.value());
        notes.addAll(ready.notes());
      } else {
        notes.addAll(((Opened.Refused<UnpackedFiring>) opened).sentences());
      }
    }
    return new Kept(firings, notes);
  }

  private Path file(String id) {
    return folder.resolve(id + FIRING);
  }

  private Path log(String id) {
    return folder.resolve(id + UNPACKING);
  }

  private static <T> Opened<T> opened(ReadResult<T> result) {
    List<String> sentences = sentences(result);
    return result.found().isPresent()
        ? new Opened.Ready<>(result.found().get(), sentences)
        : new Opened.Refused<>(false, sentences);
  }

  private static List<String> sentences(ReadResult<?> result) {
    return result.problems().stream().map(Problem::sentence).toList();
  }
}
