package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.measure.Cone;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.FiringKind;

/** A firing, in a kiln that the studio has. */
final class FiringFormat {
  private FiringFormat() {}

  static Optional<Firing> read(FieldReader fields, Studio studio) {
    String kiln = fields.id("kiln");
    FiringKind kind = fields.choice("kind", FiringKind.class);
    Cone cone = fields.required("cone", FileValue::cone, new Cone("6"));
    int tolerance = fields.whole("coneTolerance", 0, Cone.NUMBERS.size());
    Atmosphere atmosphere = fields.choice("atmosphere", Atmosphere.class);
    List<String> kilns = studio.kilns().stream().map(Kiln::id).toList();
    if (!kiln.equals(FieldReader.NO_ID) && !kilns.contains(kiln)) {
      fields.fault(
          "kiln",
          "The studio has no kiln " + Shown.quoted(kiln) + ".",
          NearMiss.advice(kiln, kilns));
    }
    return fields.make(() -> new Firing(kiln, kind, cone, tolerance, atmosphere));
  }

  static void write(Firing firing, FieldWriter fields) {
    fields
        .text("kiln", firing.kilnId())
        .word("kind", firing.kind())
        .cone("cone", Optional.of(firing.cone()))
        .whole("coneTolerance", firing.coneTolerance())
        .word("atmosphere", firing.atmosphere());
  }
}
