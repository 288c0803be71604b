package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;

/** Two glazes that mark each other, and how far apart they are kept. */
final class KeptApartFormat {
  private static final LengthRange DISTANCE = LengthRange.ofMillimetres(1, 3000);

  private KeptApartFormat() {}

  static Optional<KeptApart> read(FieldReader fields) {
    List<String> glazes = fields.ids("glazes");
    Apartness apartness = fields.choice("apart", Apartness.class);
    Optional<Length> distance =
        fields.optional("distance", node -> FileValue.length(node, DISTANCE));
    if (glazes.size() != 2 && fields.isStillGood()) {
      fields.fault("glazes", "There are " + glazes.size() + " glazes in this rule.", "Name two.");
    }
    if (apartness == Apartness.BY_DISTANCE && !fields.has("distance")) {
      fields.fault("distance", "The field is missing.", "Say how far apart the glazes are kept.");
    }
    return fields.make(() -> new KeptApart(glazes.get(0), glazes.get(1), apartness, distance));
  }

  static void write(KeptApart rule, FieldWriter fields) {
    fields
        .texts("glazes", List.of(rule.glazeId(), rule.otherGlazeId()))
        .word("apart", rule.apartness())
        .length("distance", rule.distance());
  }
}
