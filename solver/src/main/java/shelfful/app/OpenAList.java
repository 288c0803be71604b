package shelfful.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.files.BatchListReader;
import shelfful.files.ReadResult;
import shelfful.files.StudioReader;
import shelfful.load.Firing;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;

/** Opens a studio and a batch list and asks for the usual glaze firing of them. */
public final class OpenAList {
  private static final long SEED = 1;

  private OpenAList() {}

  /**
   * A file that is at hand.
   *
   * @param name to call it by in problems; its ending tells JSON from a table
   * @param bytes what is in it
   */
  public record Document(String name, byte[] bytes) {}

  /**
   * Opens both; never throws for what is in them.
   *
   * @param day of the firing, against which due dates count
   */
  public static Opened<LoadRequest> open(Document studio, Document list, LocalDate day) {
    ReadResult<Studio> read = StudioReader.read(studio.name(), studio.bytes());
    List<String> notes = read.sentences();
    return read.found()
        .map(found -> asked(found, list, day, notes))
        .orElseGet(() -> new Opened.Refused<>(false, notes));
  }

  private static Opened<LoadRequest> asked(
      Studio studio, Document list, LocalDate day, List<String> before) {
    ReadResult<List<Batch>> read = BatchListReader.read(list.name(), list.bytes(), studio);
    List<String> notes = new ArrayList<>(before);
    notes.addAll(read.sentences());
    if (read.found().isEmpty()) {
      return new Opened.Refused<>(false, notes);
    }
    Optional<LoadRequest> request = request(studio, read.found().get(), day);
    if (request.isEmpty()) {
      notes.add(
          list.name()
              + ": nothing on the list can go into a glaze firing. Add bisque ware with a glaze.");
      return new Opened.Refused<>(false, notes);
    }
    return new Opened.Ready<>(request.get(), notes);
  }

  /**
   * Asks for the usual glaze firing of batches that are at hand; empty when nothing can go into
   * one.
   *
   * @param day of the firing, against which due dates count
   */
  public static Optional<LoadRequest> request(Studio studio, List<Batch> batches, LocalDate day) {
    Optional<Firing> firing =
        studio.kilns().stream()
            .findFirst()
            .flatMap(kiln -> UsualFiring.of(studio, batches, kiln, FiringKind.GLAZE));
    return firing.map(
        one -> new LoadRequest(studio, batches, one, Optional.empty(), Optional.of(day), SEED, 0));
  }
}
