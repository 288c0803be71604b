package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.measure.LengthUnit;
import shelfful.measure.TextReading;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/** The fields of a studio, in a file of its own or within a plan. */
final class StudioFormat {
  private StudioFormat() {}

  static Optional<Studio> read(FieldReader fields) {
    String name = fields.name("name");
    LengthUnit unit =
        fields
            .optional("unit", node -> FieldReader.text(node).then(StudioFormat::unit))
            .orElse(LengthUnit.MILLIMETRES);
    HouseRules rules = fields.optionalObject("rules", RulesFormat::read).orElse(RulesFormat.USUAL);
    List<Kiln> kilns = fields.objects("kilns", KilnFormat::read);
    List<Shelf> shelves = fields.objects("shelves", ShelfFormat::read);
    List<Post> posts = fields.objects("posts", PostFormat::read);
    List<Glaze> glazes = fields.optionalObjects("glazes", GlazeFormat::read);
    List<Form> forms = fields.objects("forms", FormFormat::read);
    Studio good = new Studio(name, unit, forms, glazes, kilns, shelves, posts, rules);
    StudioCheck.check(good, fields);
    return fields.make(() -> good);
  }

  private static TextReading<LengthUnit> unit(String word) {
    for (LengthUnit unit : LengthUnit.values()) {
      if (word(unit).equals(word)) {
        return new TextReading.Understood<>(unit);
      }
    }
    return new TextReading.Refused<>(Shown.quoted(word) + " is not a unit.", "Use mm, cm or in.");
  }

  private static String word(LengthUnit unit) {
    return switch (unit) {
      case MILLIMETRES -> "mm";
      case CENTIMETRES -> "cm";
      case INCHES -> "in";
    };
  }

  static void write(Studio studio, FieldWriter fields) {
    fields
        .text("name", studio.name())
        .text("unit", word(studio.unit()))
        .object("rules", studio.rules(), RulesFormat::write)
        .objects("kilns", studio.kilns(), KilnFormat::write)
        .objects("shelves", studio.shelves(), ShelfFormat::write)
        .objects("posts", studio.posts(), PostFormat::write)
        .objects("glazes", studio.glazes(), GlazeFormat::write)
        .objects("forms", studio.forms(), FormFormat::write);
  }
}
