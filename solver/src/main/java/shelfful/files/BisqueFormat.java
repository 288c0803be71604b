package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Hollow;
import shelfful.ware.Piling;

/** How pieces of a form may be set with others in a bisque firing. */
final class BisqueFormat {
  private BisqueFormat() {}

  static Optional<BisqueSetting> read(FieldReader fields) {
    Optional<Piling> piled = fields.optionalObject("piled", BisqueFormat::readPiled);
    boolean rimToRim = fields.flag("rimToRim", false);
    boolean footToFoot = fields.flag("footToFoot", false);
    Optional<Hollow> hollow = fields.optionalObject("hollow", BisqueFormat::readHollow);
    Optional<Mass> carries = fields.optional("carries", FileValue::mass);
    return fields.make(() -> new BisqueSetting(piled, rimToRim, footToFoot, hollow, carries));
  }

  private static Optional<Piling> readPiled(FieldReader fields) {
    int mostHigh = fields.whole("mostHigh", Piling.LEAST, Piling.MOST);
    Length increment = fields.length("increment", LengthRange.SIZE);
    return fields.make(() -> new Piling(mostHigh, increment));
  }

  private static Optional<Hollow> readHollow(FieldReader fields) {
    OutlineFormat.Maker clear = OutlineFormat.maker(fields);
    Length deep = fields.length("deep", LengthRange.SIZE);
    List<String> forms = fields.ids("forms");
    return fields.make(() -> new Hollow(clear.outline(), deep, forms));
  }

  static void write(BisqueSetting setting, FieldWriter fields) {
    setting.piled().ifPresent(piled -> fields.object("piled", piled, BisqueFormat::writePiled));
    if (setting.rimToRim()) {
      fields.flag("rimToRim", true);
    }
    if (setting.footToFoot()) {
      fields.flag("footToFoot", true);
    }
    setting
        .hollow()
        .ifPresent(hollow -> fields.object("hollow", hollow, BisqueFormat::writeHollow));
    setting.carries().ifPresent(most -> fields.mass("carries", most));
  }

  private static void writePiled(Piling piled, FieldWriter fields) {
    fields.whole("mostHigh", piled.mostHigh()).length("increment", piled.increment());
  }

  private static void writeHollow(Hollow hollow, FieldWriter fields) {
    OutlineFormat.write(hollow.clear(), fields);
    fields.length("deep", hollow.deep()).texts("forms", hollow.formIds());
  }
}
