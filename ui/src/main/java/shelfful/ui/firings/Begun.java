package shelfful.ui.firings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.app.FiringFolder;
import shelfful.app.KeepFirings;
import shelfful.app.Opened;
import shelfful.record.UnpackedFiring;
import shelfful.ui.words.Words;

/**
 * What came of beginning a record.
 *
 * @param folder it is kept in
 * @param opened the record, or why there is none
 * @param kept every firing of the folder then
 */
record Begun(FiringFolder folder, Opened<UnpackedFiring> opened, KeepFirings.Kept kept) {

  /** The record's id, if there is one. */
  Optional<String> id() {
    return opened instanceof Opened.Ready<UnpackedFiring> ready
        ? Optional.of(ready.value().record().id())
        : Optional.empty();
  }

  /** What is said of it. */
  String told(Words words) {
    List<String> lines = new ArrayList<>();
    if (opened instanceof Opened.Ready<UnpackedFiring> ready) {
      lines.add(words.of("book.begun", folder.path()));
      lines.addAll(ready.notes());
    } else {
      lines.addAll(((Opened.Refused<UnpackedFiring>) opened).sentences());
    }
    return String.join("\n", lines);
  }
}
