package shelfful.ui.shelfview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import shelfful.drawing.LayerPicture;
import shelfful.drawing.Sheet;
import shelfful.load.Layer;
import shelfful.measure.LengthUnit;
import shelfful.ui.DemoPlan;
import shelfful.ui.Screen;

class SheetPatchTest {
  /** Of 255 shades; a line that were missing would differ by more. */
  private static final int SOFT = 48;

  private final LayerPicture picture = LayerPicture.of(DemoPlan.load(), LengthUnit.MILLIMETRES);
  private final Layer layer = DemoPlan.load().load().layers().get(0);

  private Sheet sheet(Optional<String> lifted, Set<String> pinned) {
    return picture.layer(layer.id(), new LayerPicture.Marked(lifted, pinned));
  }

  /** The layer as it is, then without some of its pieces, then with pins. */
  private List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(sheet(Optional.empty(), Set.of()));
    for (int i = 0; i < layer.placements().size(); i += 4) {
      String id = layer.placements().get(i).pieceId();
      sheets.add(sheet(Optional.of(id), Set.of()));
      sheets.add(sheet(Optional.empty(), Set.of(id)));
    }
    return sheets;
  }

  private static ShelfView open(int zoom, Sheet sheet) {
    ShelfView view = new ShelfView();
    Stage stage = new Stage();
    stage.setScene(new Scene(view, 500, 420));
    stage.show();
    view.show(List.of(sheet), "");
    view.applyCss();
    view.layout();
    for (int i = 0; i < zoom; i++) {
      view.zoomIn();
    }
    return view;
  }

  private static int differing(WritableImage one, WritableImage other) {
    int differing = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        if (isUnlike(one.getPixelReader().getArgb(x, y), other.getPixelReader().getArgb(x, y))) {
          differing++;
        }
      }
    }
    return differing;
  }

  /**
   * Soft edges of curves may be rounded in another way where they are cut; by no more than this.
   */
  private static boolean isUnlike(int one, int other) {
    for (int shift = 0; shift <= 16; shift += 8) {
      if (Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)) > SOFT) {
        return true;
      }
    }
    return false;
  }

  @Test
  void whatIsPaintedAgainInPartLooksAsIfItWerePaintedWhole() {
    List<Sheet> sheets = sheets();
    assertThat(sheets).hasSizeGreaterThan(4);
    for (int zoom : new int[] {0, 3}) {
      ShelfView view = Screen.on(() -> open(zoom, sheets.get(0)));
      WritableImage before = Screen.on(() -> view.snapshot(null, null));
      for (Sheet sheet : sheets.subList(1, sheets.size())) {
        WritableImage patched =
            Screen.on(
                () -> {
                  view.show(List.of(sheet), "");
                  return view.snapshot(null, null);
                });
        WritableImage whole =
            Screen.on(
                () -> {
                  ShelfView fresh = open(zoom, sheet);
                  WritableImage image = fresh.snapshot(null, null);
                  fresh.getScene().getWindow().hide();
                  return image;
                });
        assertThat(differing(patched, whole)).as("pixels at zoom " + zoom).isZero();
        if (zoom == 0) {
          assertThat(differing(patched, before)).as("the sheets differ").isPositive();
        }
      }
      Screen.on(
          () -> {
            view.getScene().getWindow().hide();
            return null;
          });
    }
  }
}
