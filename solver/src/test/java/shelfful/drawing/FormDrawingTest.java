package shelfful.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shelfful.files.StudioReader;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.measure.LengthUnit;
import shelfful.studio.Studio;
import shelfful.ware.Form;

class FormDrawingTest {
  private static final double WIDE = 130;
  private static final double HIGH = 78;

  private static Studio studio;

  @BeforeAll
  static void readTheDemo() throws IOException {
    byte[] bytes = Files.readAllBytes(Path.of("..", "demo-data", "studio.json"));
    studio = StudioReader.read("studio.json", bytes).found().orElseThrow();
  }

  @Test
  void everyFormLiesOnItsPictureWithAMarkForEachBandAndHandleInBothViews() {
    for (Form form : studio.forms()) {
      Sheet sheet = FormDrawing.of(form, LengthUnit.MILLIMETRES, WIDE, HIGH);
      assertThat(sheet.marks()).as(form.id()).allSatisfy(mark -> assertThat(within(mark)).isTrue());
      long ovals = sheet.marks().stream().filter(Mark.Oval.class::isInstance).count();
      long bars = sheet.marks().stream().filter(Mark.Capsule.class::isInstance).count();
      long boxes = sheet.marks().stream().filter(Mark.Path.class::isInstance).count();
      int bands = form.profile().bands().size();
      int lugs = form.profile().lugs().size();
      assertThat(ovals).as("bands and foot").isEqualTo(bands + 1);
      assertThat(bars).isEqualTo(lugs);
      assertThat(boxes).isEqualTo(bands + lugs + (form.lid().isPresent() ? 1 : 0));
    }
  }

  private static boolean within(Mark mark) {
    if (mark instanceof Mark.Oval oval) {
      return holds(oval.centre().x() - oval.halfWidth(), oval.centre().y() - oval.halfDepth())
          && holds(oval.centre().x() + oval.halfWidth(), oval.centre().y() + oval.halfDepth());
    }
    if (mark instanceof Mark.Path path) {
      return path.corners().stream().allMatch(corner -> holds(corner.x(), corner.y()));
    }
    if (mark instanceof Mark.Text text) {
      return holds(text.box().left(), text.box().top())
          && holds(text.box().right(), text.box().bottom());
    }
    return true;
  }

  private static boolean holds(double x, double y) {
    return x >= 0 && x <= WIDE && y >= 0 && y <= HIGH;
  }

  @Test
  void bothViewsAreAtOneScale() {
    Form bowl = studio.form("bowl-small").orElseThrow();
    Sheet sheet = FormDrawing.of(bowl, LengthUnit.MILLIMETRES, WIDE, HIGH);
    double widest =
        sheet.marks().stream()
            .filter(Mark.Oval.class::isInstance)
            .mapToDouble(mark -> 2 * ((Mark.Oval) mark).halfWidth())
            .max()
            .orElseThrow();
    double rim =
        sheet.marks().stream()
            .filter(Mark.Path.class::isInstance)
            .mapToDouble(mark -> Box.round(((Mark.Path) mark).corners()).width())
            .max()
            .orElseThrow();
    assertThat(rim).isCloseTo(widest, Offset.offset(1e-9));
  }

  @Test
  void everyColumnPlanShowsAShelfForEachPlaceAndEveryPost() {
    for (Kiln kiln : studio.kilns()) {
      for (ColumnPlan plan : kiln.columnPlans()) {
        Sheet sheet = ChamberDrawing.of(studio, kiln, plan, 110);
        int places = plan.columns().stream().mapToInt(column -> column.places().size()).sum();
        int posts = plan.columns().stream().mapToInt(column -> column.posts().size()).sum();
        assertThat(sheet.marks().stream().filter(Mark.Circle.class::isInstance)).hasSize(posts);
        assertThat(sheet.marks().stream().filter(Mark.Path.class::isInstance))
            .as("the wall, the shelves, the keep-outs")
            .hasSize(1 + places + kiln.keepOuts().size());
      }
    }
  }
}
