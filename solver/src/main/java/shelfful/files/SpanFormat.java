package shelfful.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import shelfful.week.Span;

/** A stretch of time. */
final class SpanFormat {
  private static final LocalDateTime STAND_IN = LocalDate.EPOCH.atStartOfDay();

  private SpanFormat() {}

  static Optional<Span> read(FieldReader fields) {
    LocalDateTime from = fields.required("from", TimeText::moment, STAND_IN);
    LocalDateTime to = fields.required("to", TimeText::moment, STAND_IN.plusDays(1));
    return fields.make(() -> new Span(from, to));
  }

  static void write(Span span, FieldWriter fields) {
    fields.text("from", TimeText.moment(span.from())).text("to", TimeText.moment(span.to()));
  }
}
