package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Lid;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Profile;

/** Every figure of a form. */
final class FormFigures {
  private FormFigures() {}

  static List<Length> lengths(Form form) {
    Profile profile = form.profile();
    List<Length> lengths = new ArrayList<>();
    lengths.add(form.tolerance());
    lengths.add(form.bareFoot());
    lengths.add(profile.height());
    lengths.addAll(of(profile.foot()));
    for (Band band : profile.bands()) {
      lengths.addAll(of(band.outline()));
      lengths.add(band.to());
    }
    for (Lug lug : profile.lugs()) {
      lengths.addAll(List.of(lug.reach(), lug.width(), lug.to()));
    }
    if (form.lid().isPresent()) {
      Lid lid = form.lid().get();
      lengths.addAll(of(lid.outline()));
      lengths.addAll(List.of(lid.height(), lid.rise()));
    }
    form.bisque().piled().ifPresent(piled -> lengths.add(piled.increment()));
    form.bisque().hollow().ifPresent(hollow -> lengths.addAll(of(hollow.clear())));
    form.bisque().hollow().ifPresent(hollow -> lengths.add(hollow.deep()));
    return lengths;
  }

  static List<Mass> masses(Form form) {
    List<Mass> masses = new ArrayList<>(List.of(form.mass()));
    form.lid().ifPresent(lid -> masses.add(lid.mass()));
    form.bisque().carries().ifPresent(masses::add);
    return masses;
  }

  private static List<Length> of(Outline outline) {
    return List.of(outline.width(), outline.depth());
  }
}
