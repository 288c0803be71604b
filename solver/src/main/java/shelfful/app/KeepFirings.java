package shelfful.app;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import shelfful.drawing.PlanMark;
import shelfful.files.FiringRecordReader;
import shelfful.files.FiringRecordWriter;
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
 * it went, and beside it a file that results are added to, line by line. A firing is known by the
 * id in its file, not by the file's name: one that was renamed is still written where it is.
 */
public final class KeepFirings {
  private static final String FIRING = ".firing.json";
  private static final String UNPACKING = ".unpacking.jsonl";

  private final Path folder;

  /** Where the firings that were read lie, by their ids. */
  private final Map<String, Path> files = new ConcurrentHashMap<>();

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
   * Begins the record of a plan that is fired. One of that plan and day that is there already,
   * under whatever name, is left as it is.
   *
   * @param limit what no load of its list can exceed, where it is known
   * @return the file it is kept in
   * @throws SaveFailed when it cannot be saved
   */
  public Path begin(InspectedLoad load, LocalDate day, Optional<Integer> limit)
      throws SaveFailed, IOException {
    Files.createDirectories(folder);
    FiringRecord record = FiringRecord.of(load, day, PlanMark.of(load.load()).shortForm(), limit);
    all();
    Path file = file(record.id());
    if (Files.notExists(file)) {
      FiringRecordWriter.write(record, file);
    }
    return file;
  }

  /** Saves what was noted of a firing of the folder. */
  public void note(FiringRecord record) throws SaveFailed {
    note(record, file(record.id()));
  }

  /** Saves what was noted of a firing in its file. */
  public static void note(FiringRecord record, Path file) throws SaveFailed {
    FiringRecordWriter.write(record, file);
  }

  /** Adds results of pieces to a firing of the folder; later ones of the same piece hold. */
  public void add(FiringRecord record, List<PieceResult> results) throws SaveFailed {
    add(results, file(record.id()));
  }

  /** Adds results of pieces beside the file of their firing; later ones of the same piece hold. */
  public static void add(List<PieceResult> results, Path file) throws SaveFailed {
    UnpackingLog.append(results, log(file));
  }

  /** The results a note from a phone holds; all of them or none. */
  public static Opened<List<PieceResult>> fromNote(Path note, FiringRecord record) {
    return Opened.of(UnpackingNote.read(note, record));
  }

  /** Opens the file of one firing with its results. */
  public static Opened<UnpackedFiring> open(Path file) {
    ReadResult<FiringRecord> record = FiringRecordReader.read(file);
    if (record.found().isEmpty()) {
      return new Opened.Refused<>(false, record.sentences());
    }
    List<String> notes = new ArrayList<>(record.sentences());
    List<PieceResult> all = new ArrayList<>();
    for (Path log : logs(file, record.found().get().id())) {
      ReadResult<List<PieceResult>> results = UnpackingLog.read(log);
      notes.addAll(results.sentences());
      results.found().ifPresent(all::addAll);
    }
    return new Opened.Ready<>(new UnpackedFiring(record.found().get(), all), notes);
  }

  /**
   * Where results of a firing lie, the earlier first: beside a file that was renamed there may be
   * those from before, still under the firing's own id.
   */
  private static List<Path> logs(Path file, String id) {
    Path first = file.resolveSibling(id + FIRING);
    return log(first).equals(log(file)) || Files.exists(first)
        ? List.of(log(file))
        : List.of(log(first), log(file));
  }

  /** The file of results that belongs to the file of a firing. */
  private static Path log(Path file) {
    String name = file.getFileName().toString();
    String stem = name.endsWith(FIRING) ? name.substring(0, name.length() - FIRING.length()) : name;
    return file.resolveSibling(stem + UNPACKING);
  }

  /**
   * Every firing of the folder, each once; what cannot be read, and a second file of the same
   * firing, is passed over and told.
   */
  public Kept all() throws IOException {
    if (!Files.isDirectory(folder)) {
      return new Kept(List.of(), List.of("There is no folder " + folder + "."));
    }
    TreeSet<Path> found = new TreeSet<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + FIRING)) {
      all.forEach(found::add);
    }
    List<UnpackedFiring> firings = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    Map<String, Path> first = new HashMap<>();
    for (Path file : found) {
      Opened<UnpackedFiring> opened = open(file);
      if (opened instanceof Opened.Refused<UnpackedFiring> refused) {
        notes.addAll(refused.sentences());
        continue;
      }
      Opened.Ready<UnpackedFiring> ready = (Opened.Ready<UnpackedFiring>) opened;
      Path other = first.putIfAbsent(ready.value().record().id(), file);
      if (other == null) {
        firings.add(ready.value());
        notes.addAll(ready.notes());
      } else {
        notes.add(twice(file, ready.value().record().id(), other));
      }
    }
    files.keySet().retainAll(first.keySet());
    files.putAll(first);
    return new Kept(firings, notes);
  }

  private static String twice(Path file, String id, Path other) {
    return file.getFileName()
        + ", /id, id: The firing "
        + id
        + " is kept in "
        + other.getFileName()
        + " already; this file is passed over. Take one of the two out of the folder.";
  }

  private Path file(String id) {
    return files.getOrDefault(id, folder.resolve(id + FIRING));
  }
}
