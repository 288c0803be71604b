package shelfful.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import shelfful.edit.WorkPlan;
import shelfful.files.AtomicSave;
import shelfful.files.ReadResult;
import shelfful.files.SaveFailed;
import shelfful.files.WorkReader;
import shelfful.files.WorkWriter;
import shelfful.inspect.Finding;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.inspect.JudgedLoad;

/**
 * A work file as it was when it was last read or saved here. Saving compares first: a file that
 * somebody changed in the meantime is not written over.
 */
public final class WorkFile {
  private final Path path;
  private final Optional<String> mark;

  private WorkFile(Path path, Optional<String> mark) {
    this.path = path;
    this.mark = mark;
  }

  /**
   * Work that was opened.
   *
   * @param plan the work
   * @param judged what the judge says of it
   * @param file where it is saved; empty for a plan file, which work is not saved over
   */
  public record OpenWork(WorkPlan plan, JudgedLoad judged, Optional<WorkFile> file) {}

  /** What came of saving. */
  public sealed interface Saved {

    /** It is on the disk. */
    record Done(WorkFile file) implements Saved {}

    /** Somebody else changed the file since; nothing was written. */
    record ChangedElsewhere() implements Saved {}

    /**
     * It could not be written; the old file is as it was.
     *
     * @param sentence what failed and what to do
     */
    record Failed(String sentence) implements Saved {}
  }

  /**
   * Opens a work file, or a plan file as work; never throws for what is in it. A plan that breaks
   * rules is refused, for it was changed by other hands; work may break them.
   */
  public static Opened<OpenWork> open(Path path) {
    Optional<String> mark = mark(path);
    ReadResult<WorkReader.Work> read = WorkReader.read(path);
    List<String> notes = read.sentences();
    if (read.found().isEmpty()) {
      return new Opened.Refused<>(false, notes);
    }
    WorkReader.Work work = read.found().get();
    Inspector inspector = new Inspector();
    Optional<JudgedLoad> judged = inspector.judge(work.plan().load());
    boolean shown = judged.filter(one -> !work.isPlan() || one.faults().isEmpty()).isPresent();
    if (!shown) {
      return new Opened.Refused<>(true, faults(inspector.inspect(work.plan().load())));
    }
    Optional<WorkFile> file =
        work.isPlan() ? Optional.empty() : Optional.of(new WorkFile(path, mark));
    return new Opened.Ready<>(new OpenWork(work.plan(), judged.get(), file), notes);
  }

  private static List<String> faults(Inspection inspection) {
    return inspection instanceof Inspection.Failed failed
        ? failed.findings().stream().map(Finding::sentence).toList()
        : List.of();
  }

  /** A name chosen for work that has no file yet; what may be there already is to be replaced. */
  public static WorkFile at(Path path) {
    return new WorkFile(path, mark(path));
  }

  /** Where it is. */
  public Path path() {
    return path;
  }

  /** Saves the work unless the file was changed elsewhere. */
  public Saved save(WorkPlan work) {
    if (!mark(path).equals(mark)) {
      return new Saved.ChangedElsewhere();
    }
    return write(work);
  }

  /** Saves the work whatever the file holds now; that is kept as {@code name.bak}. */
  public Saved saveAllTheSame(WorkPlan work) {
    return write(work);
  }

  /** A name beside this one that is free, for keeping both. */
  public WorkFile another() {
    String name = String.valueOf(path.getFileName());
    int dot = name.indexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = dot > 0 ? name.substring(dot) : "";
    int number = 2;
    Path free = path.resolveSibling(stem + "-" + number + ending);
    while (Files.exists(free)) {
      number++;
      free = path.resolveSibling(stem + "-" + number + ending);
    }
    return new WorkFile(free, Optional.empty());
  }

  private Saved write(WorkPlan work) {
    byte[] bytes = WorkWriter.bytes(work);
    try {
      AtomicSave.save(path, bytes);
      return new Saved.Done(new WorkFile(path, Optional.of(mark(bytes))));
    } catch (SaveFailed failed) {
      return new Saved.Failed(failed.sentence());
    }
  }

  /** Size and hash of the file; empty when it is not there. */
  private static Optional<String> mark(Path path) {
    try {
      return Optional.of(mark(Files.readAllBytes(path)));
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  private static String mark(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return bytes.length + ":" + HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
