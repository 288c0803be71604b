package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.ware.Catcher;
import shelfful.ware.KeptApart;

/** The house rules; each one left out is common practice, no source. */
final class RulesFormat {
  private static final int MOST_DAYS = 365;
  private static final LengthRange THICKNESS = LengthRange.ofMillimetres(1, 100);

  private static final Catcher USUAL_CATCHER =
      new Catcher(Length.ofMillimetres(4), Length.ofMillimetres(10), Mass.ofKilograms(0.1));

  static final HouseRules USUAL =
      new HouseRules(Clearances.COMMON_PRACTICE, true, 2, USUAL_CATCHER, List.of(), 7);

  private RulesFormat() {}

  static Optional<HouseRules> read(FieldReader fields) {
    Clearances clearances =
        fields.optionalObject("clearances", ClearancesFormat::read).orElse(USUAL.clearances());
    boolean bellyMayPassEdge = fields.flag("bellyMayPassEdge", USUAL.bellyMayPassEdge());
    int mostPostPieces = fields.whole("mostPostPieces", 1, 2, USUAL.mostPostPieces());
    Catcher catcher =
        fields.optionalObject("catcher", RulesFormat::readCatcher).orElse(USUAL_CATCHER);
    List<KeptApart> keptApart = fields.optionalObjects("keptApart", KeptApartFormat::read);
    int dueSoonDays = fields.whole("dueSoonDays", 0, MOST_DAYS, USUAL.dueSoonDays());
    return fields.make(
        () ->
            new HouseRules(
                clearances, bellyMayPassEdge, mostPostPieces, catcher, keptApart, dueSoonDays));
  }

  private static Optional<Catcher> readCatcher(FieldReader fields) {
    Length thickness = fields.length("thickness", THICKNESS);
    Length margin = fields.length("margin", LengthRange.CLEARANCE);
    Mass mass = fields.mass("mass");
    return fields.make(() -> new Catcher(thickness, margin, mass));
  }

  static void write(HouseRules rules, FieldWriter fields) {
    fields
        .object("clearances", rules.clearances(), ClearancesFormat::write)
        .flag("bellyMayPassEdge", rules.bellyMayPassEdge())
        .whole("mostPostPieces", rules.mostPostPieces())
        .object("catcher", rules.catcher(), RulesFormat::writeCatcher)
        .objects("keptApart", rules.keptApart(), KeptApartFormat::write)
        .whole("dueSoonDays", rules.dueSoonDays());
  }

  private static void writeCatcher(Catcher catcher, FieldWriter fields) {
    fields
        .length("thickness", catcher.thickness())
        .length("margin", catcher.margin())
        .mass("mass", catcher.mass());
  }
}
