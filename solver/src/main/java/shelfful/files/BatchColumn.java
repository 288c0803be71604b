package shelfful.files;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The columns that a table of batches may have. */
enum BatchColumn {
  BATCH,
  FORM,
  GLAZE,
  QUANTITY,
  STAGE,
  CONE,
  MUST_GO,
  PRIORITY,
  DUE,
  ORDER,
  SET,
  LID;

  /** The column's heading in the tables we write. */
  String heading() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean isRequired() {
    return this == FORM || this == QUANTITY;
  }

  /** Capitals do not count, and a space or hyphen is as good as an underscore. */
  static Optional<BatchColumn> of(String heading) {
    String plain = heading.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", "_");
    return Arrays.stream(values()).filter(column -> column.heading().equals(plain)).findFirst();
  }

  static List<String> headings() {
    return Arrays.stream(values()).map(BatchColumn::heading).toList();
  }
}
