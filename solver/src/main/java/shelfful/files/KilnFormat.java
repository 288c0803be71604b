package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.kiln.Chamber;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.measure.Cone;

/** A kiln. */
final class KilnFormat {
  private KilnFormat() {}

  static Optional<Kiln> read(FieldReader fields) {
    String id = fields.id("id");
    String name = fields.name("name");
    Loading loading = fields.choice("loading", Loading.class);
    Optional<Chamber> chamber = fields.object("chamber", ChamberFormat::read);
    Optional<Cone> hottest = fields.optionalCone("hottest");
    List<KeepOut> keepOuts = fields.optionalObjects("keepOuts", KeepOutFormat::read);
    List<ColumnPlan> plans = fields.objects("columnPlans", ColumnFormat::readPlan);
    return fields.make(
        () -> new Kiln(id, name, loading, chamber.orElseThrow(), hottest, keepOuts, plans));
  }

  static void write(Kiln kiln, FieldWriter fields) {
    fields
        .text("id", kiln.id())
        .text("name", kiln.name())
        .word("loading", kiln.loading())
        .object("chamber", kiln.chamber(), ChamberFormat::write)
        .cone("hottest", kiln.hottest())
        .objects("keepOuts", kiln.keepOuts(), KeepOutFormat::write)
        .objects("columnPlans", kiln.columnPlans(), ColumnFormat::writePlan);
  }
}
