package shelfful.ui.studio;

import java.util.Optional;
import shelfful.drawing.ChamberDrawing;
import shelfful.drawing.FormDrawing;
import shelfful.drawing.Sheet;
import shelfful.kiln.Kiln;
import shelfful.studio.Studio;
import shelfful.ware.Form;

/** What is drawn beside a page, and what is said of it to those who cannot see it. */
record StudioPictures(Manner manner) {
  private static final double WIDE = 130;
  private static final double HIGH = 78;
  private static final double SQUARE = 110;

  Optional<Sheet> of(Studio studio, Section section, int index) {
    if (section == Section.FORMS && index < studio.forms().size()) {
      return Optional.of(FormDrawing.of(studio.forms().get(index), manner.unit(), WIDE, HIGH));
    }
    if (section == Section.KILNS && index < studio.kilns().size()) {
      Kiln kiln = studio.kilns().get(index);
      return Optional.of(ChamberDrawing.of(studio, kiln, kiln.columnPlans().get(0), SQUARE));
    }
    if (section == Section.PLANS && index < KilnPlan.of(studio).size()) {
      KilnPlan one = KilnPlan.of(studio).get(index);
      return Optional.of(ChamberDrawing.of(studio, one.kiln(studio), one.plan(), SQUARE));
    }
    return Optional.empty();
  }

  String told(Studio studio, Section section, int index) {
    if (section == Section.FORMS && index < studio.forms().size()) {
      Form form = studio.forms().get(index);
      return manner
          .words()
          .of(
              "picture.form",
              form.name(),
              form.profile().bands().size(),
              form.profile().lugs().size(),
              manner.length(form.profile().height()));
    }
    if (section == Section.KILNS && index < studio.kilns().size()) {
      Kiln kiln = studio.kilns().get(index);
      return manner.words().of("picture.kiln", kiln.name(), kiln.columnPlans().get(0).name());
    }
    if (section == Section.PLANS && index < KilnPlan.of(studio).size()) {
      KilnPlan one = KilnPlan.of(studio).get(index);
      return manner.words().of("picture.kiln", one.kiln(studio).name(), one.plan().name());
    }
    return "";
  }
}
