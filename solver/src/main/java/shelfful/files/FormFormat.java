package shelfful.files;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;
import shelfful.ware.Lid;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/** A form. */
final class FormFormat {
  private FormFormat() {}

  static Optional<Form> read(FieldReader fields) {
    String id = fields.id("id");
    String name = fields.name("name");
    Stage measuredAt = fields.choice("measuredAt", Stage.class);
    Shrinkage shrinkage =
        fields.optionalObject("shrinkage", ShrinkageFormat::read).orElse(Shrinkage.NONE);
    ProfileFormat.Maker profile = ProfileFormat.maker(fields);
    Optional<Lid> lid = fields.optionalObject("lid", LidFormat::read);
    Mass mass = fields.mass("mass");
    Length tolerance = fields.length("tolerance", LengthRange.CLEARANCE, Length.ZERO);
    BisqueSetting bisque =
        fields.optionalObject("bisque", BisqueFormat::read).orElse(BisqueSetting.ALONE);
    Length bareFoot = fields.length("bareFoot", LengthRange.CLEARANCE, Length.ZERO);
    return fields.make(
        () ->
            new Form(
                id,
                name,
                measuredAt,
                shrinkage,
                profile.profile(),
                lid,
                mass,
                tolerance,
                bareFoot,
                bisque));
  }

  static void write(Form form, FieldWriter fields) {
    fields.text("id", form.id()).text("name", form.name()).word("measuredAt", form.measuredAt());
    if (!form.shrinkage().equals(Shrinkage.NONE)) {
      fields.object("shrinkage", form.shrinkage(), ShrinkageFormat::write);
    }
    ProfileFormat.write(form.profile(), fields);
    form.lid().ifPresent(lid -> fields.object("lid", lid, LidFormat::write));
    fields
        .mass("mass", form.mass())
        .length("tolerance", form.tolerance())
        .length("bareFoot", form.bareFoot());
    if (!form.bisque().isAlone()) {
      fields.object("bisque", form.bisque(), BisqueFormat::write);
    }
  }
}
