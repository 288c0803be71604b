package shelfful.files;

import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.ware.Band;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Profile;

/**
 * The shape of a form, as fields of the form itself: foot, height, one {@code body} or several
 * {@code bands}, and lugs. A single band from the shelf to the full height is written as body.
 */
final class ProfileFormat {
  private ProfileFormat() {}

  static Maker maker(FieldReader fields) {
    Length height = fields.length("height", LengthRange.SIZE);
    Optional<Outline> foot = fields.object("foot", OutlineFormat::read);
    List<Band> bands = bands(fields, height);
    List<Lug> lugs = fields.optionalObjects("lugs", lug -> LugFormat.read(lug, bands, height));
    if (foot.isPresent() && !bands.isEmpty()) {
      checkFoot(fields, foot.get(), bands.get(0).outline());
    }
    return () -> new Profile(foot.orElseThrow(), height, bands, lugs);
  }

  private static List<Band> bands(FieldReader fields, Length height) {
    if (!fields.has("bands")) {
      return fields
          .object("body", OutlineFormat::read)
          .map(body -> List.of(new Band(body, Length.ZERO, height)))
          .orElse(List.of());
    }
    if (fields.has("body")) {
      fields.fault("body", "Both body and bands are given.", "Keep one of the two.");
    }
    int faultsBefore = fields.problems().faults();
    List<Band> bands = fields.objects("bands", BandFormat::read);
    if (bands.isEmpty() && fields.problems().faults() == faultsBefore) {
      fields.fault("bands", "There is no band.", "Give at least one, or a body instead.");
    }
    return bands;
  }

  private static void checkFoot(FieldReader fields, Outline foot, Outline lowest) {
    if (foot.width().isLongerThan(lowest.width()) || foot.depth().isLongerThan(lowest.depth())) {
      fields.fault(
          "foot",
          "The foot, " + across(foot) + ", is wider than the body over it, " + across(lowest) + ".",
          "Widen the body or its lowest band, or narrow the foot.");
    }
  }

  private static String across(Outline outline) {
    String width = FileNumber.written(outline.width());
    return outline instanceof Outline.Round
        ? width + " mm"
        : width + " x " + FileNumber.written(outline.depth()) + " mm";
  }

  static void write(Profile profile, FieldWriter fields) {
    fields.object("foot", profile.foot(), OutlineFormat::write).length("height", profile.height());
    if (profile.bands().size() == 1) {
      fields.object("body", profile.bands().get(0).outline(), OutlineFormat::write);
    } else {
      fields.objects("bands", profile.bands(), BandFormat::write);
    }
    if (!profile.lugs().isEmpty()) {
      fields.objects("lugs", profile.lugs(), LugFormat::write);
    }
  }

  /** Makes the profile once it is known that everything in it is good. */
  interface Maker {
    Profile profile();
  }
}
