package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.TextReading;
import shelfful.ware.Atmosphere;
import shelfful.ware.Glaze;
import shelfful.ware.Zone;

/** A glaze. */
final class GlazeFormat {
  private GlazeFormat() {}

  static Optional<Glaze> read(FieldReader fields) {
    String id = fields.id("id");
    String name = fields.name("name");
    String letter = fields.required("letter", GlazeFormat::letter, "?");
    String colour = fields.required("colour", GlazeFormat::colour, "#000000");
    Cone cone = fields.required("cone", FileValue::cone, new Cone("6"));
    Optional<Atmosphere> atmosphere = fields.optionalChoice("atmosphere", Atmosphere.class);
    Optional<Length> gap =
        fields.optional("gap", node -> FileValue.length(node, LengthRange.CLEARANCE));
    boolean runny = fields.flag("runny", false);
    Length bareFoot = fields.length("bareFoot", LengthRange.CLEARANCE, Length.ZERO);
    Set<Zone> likes = zones(fields, "likes");
    Set<Zone> forbidden = zones(fields, "forbidden");
    checkZones(fields, likes, forbidden);
    return fields.make(
        () ->
            new Glaze(
                id,
                name,
                letter,
                colour,
                cone,
                atmosphere,
                gap,
                runny,
                bareFoot,
                likes,
                forbidden));
  }

  private static TextReading<String> letter(JsonNode node) {
    return FieldReader.text(node)
        .then(
            text ->
                text.matches("[\\p{L}\\p{N}]{1,2}")
                    ? new TextReading.Understood<>(text)
                    : new TextReading.Refused<>(
                        Shown.quoted(text) + " does not stand for a glaze on paper.",
                        "Use one or two letters."));
  }

  private static TextReading<String> colour(JsonNode node) {
    return FieldReader.text(node)
        .then(
            text ->
                text.matches("#[0-9a-fA-F]{6}")
                    ? new TextReading.Understood<>(text.toLowerCase(Locale.ROOT))
                    : new TextReading.Refused<>(
                        Shown.quoted(text) + " is not a colour.",
                        "Write it like #3a6ea5: red, green, blue."));
  }

  private static Set<Zone> zones(FieldReader fields, String field) {
    return Set.copyOf(
        fields.optionalValues(
            field,
            node -> FieldReader.text(node).then(word -> FileValue.choice(word, Zone.class))));
  }

  private static void checkZones(FieldReader fields, Set<Zone> likes, Set<Zone> forbidden) {
    for (Zone zone : inOrder(likes)) {
      if (forbidden.contains(zone)) {
        fields.fault(
            "likes",
            "The zone " + FileValue.word(zone) + " is both liked and forbidden.",
            "Remove one of the two.");
      }
    }
  }

  private static List<Zone> inOrder(Set<Zone> zones) {
    return Arrays.stream(Zone.values()).filter(zones::contains).toList();
  }

  static void write(Glaze glaze, FieldWriter fields) {
    fields
        .text("id", glaze.id())
        .text("name", glaze.name())
        .text("letter", glaze.letter())
        .text("colour", glaze.colour())
        .cone("cone", Optional.of(glaze.cone()))
        .text("atmosphere", glaze.atmosphere().map(FileValue::word))
        .length("gap", glaze.gap())
        .flag("runny", glaze.runny())
        .length("bareFoot", glaze.bareFoot())
        .texts("likes", inOrder(glaze.likes()).stream().map(FileValue::word).toList())
        .texts("forbidden", inOrder(glaze.forbidden()).stream().map(FileValue::word).toList());
  }
}
