package shelfful.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import shelfful.studio.Studio;
import shelfful.week.WareLine;

/** A batch with the dates of its making: the fields of a batch and two more. */
final class WareLineFormat {
  private WareLineFormat() {}

  static Optional<WareLine> read(FieldReader fields, Studio studio) {
    Optional<LocalDate> made = fields.optional("made", FileValue::day);
    Optional<LocalDateTime> ready = fields.optional("ready", TimeText::moment);
    return BatchFormat.read(fields, studio)
        .map(
            batch -> {
              WareLine line = new WareLine(batch, made, ready);
              fields.madeAt().put(line, fields.path());
              return line;
            });
  }

  static void write(WareLine line, FieldWriter fields) {
    BatchFormat.write(line.batch(), fields);
    fields
        .text("made", line.made().map(LocalDate::toString))
        .text("ready", line.ready().map(TimeText::moment));
  }
}
