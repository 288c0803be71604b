package shelfful.files;

import java.util.List;
import java.util.function.Supplier;
import shelfful.week.Portion;

/** Pieces of a batch: two fields of an object that may have more. */
final class PortionFormat {
  private PortionFormat() {}

  /** Reads the fields; the portion may be made once the whole object was read without a fault. */
  static Supplier<Portion> read(FieldReader fields) {
    String batch = fields.id("batch");
    List<Integer> numbers = fields.required("numbers", NumberRuns::read, List.of(1));
    return () -> new Portion(batch, numbers);
  }

  static void write(Portion portion, FieldWriter fields) {
    fields.text("batch", portion.batchId()).text("numbers", NumberRuns.written(portion.numbers()));
  }
}
