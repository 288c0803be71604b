package shelfful.files;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;

/** A batch in a JSON file, of a form and a glaze that the studio has. */
final class BatchFormat {
  private BatchFormat() {}

  static Optional<Batch> read(FieldReader fields, Studio studio) {
    String id = fields.id("id");
    String form = fields.id("form");
    Optional<String> glaze = fields.optionalId("glaze");
    int quantity = fields.whole("quantity", 1, Batch.MOST_PIECES);
    Stage stage = fields.optionalChoice("stage", Stage.class).orElse(Stage.GLAZED);
    Optional<Cone> cone = fields.optionalCone("cone");
    boolean mustGo = fields.flag("mustGo", false);
    int priority = fields.whole("priority", 1, Batch.HIGHEST_PRIORITY, 1);
    Optional<LocalDate> due = fields.optional("due", FileValue::day);
    Optional<String> order =
        fields.optional("order", node -> FieldReader.text(node).then(FileName::name));
    Optional<String> set =
        fields.optional("set", node -> FieldReader.text(node).then(FileName::name));
    LidPlace lid = fields.optionalChoice("lid", LidPlace.class).orElse(LidPlace.ON);
    known(fields, "form", Optional.of(form), studio.forms().stream().map(Form::id).toList());
    known(fields, "glaze", glaze, studio.glazes().stream().map(Glaze::id).toList());
    return fields.make(
        () ->
            new Batch(
                id, form, glaze, quantity, stage, cone, mustGo, priority, due, order, set, lid));
  }

  private static void known(
      FieldReader fields, String field, Optional<String> id, List<String> known) {
    // A stand-in for an id that was wrong has been noted already.
    if (id.isPresent() && !id.get().equals(FieldReader.NO_ID) && !known.contains(id.get())) {
      fields.fault(
          field,
          "The studio has no " + field + " " + Shown.quoted(id.get()) + ".",
          NearMiss.advice(id.get(), known));
    }
  }

  static void write(Batch batch, FieldWriter fields) {
    fields.text("id", batch.id()).text("form", batch.formId()).text("glaze", batch.glazeId());
    fields.whole("quantity", batch.quantity()).word("stage", batch.stage());
    fields.cone("cone", batch.cone());
    fields.flag("mustGo", batch.mustGo()).whole("priority", batch.priority());
    fields
        .text("due", batch.due().map(LocalDate::toString))
        .text("order", batch.order())
        .text("set", batch.set())
        .word("lid", batch.lidPlace());
  }
}
