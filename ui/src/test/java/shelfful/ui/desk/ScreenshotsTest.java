package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.SearchLength;
import shelfful.drawing.PaperSize;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.LengthUnit;
import shelfful.ui.Picture;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.look.Theme;
import shelfful.ui.studio.Section;
import shelfful.ui.words.Words;

/** Takes the pictures of the desk for the documents; DEVELOPERS.md has the command. */
@Tag("slow")
class ScreenshotsTest {
  private static final Path INTO = Path.of(System.getProperty("screenshots", "target/screenshots"));

  private static final Settings SETTINGS = Settings.usual(Locale.ROOT);

  @TempDir private Path folder;

  @Test
  void takesAPictureOfEveryStateThatTheDocumentsShow() {
    OpenDesk desk = OpenDesk.atOnce(SearchLength.ofSteps(20), folder);
    Workshop workshop = withWorkshop(desk);
    save(desk, "start");
    desk.run(desk.model::tryTheDemo);
    save(desk, "planned");
    Layer layer = desk.model.work().plan().get().orElseThrow().load().layers().get(0);
    desk.run(() -> desk.model.chooseLayer(layer.id()));
    Placement piece = layer.placements().get(layer.placements().size() / 2);
    Placement other = layer.placements().get(0);
    double[] from = desk.pixel(piece.at());
    double[] to = desk.pixel(other.at());
    desk.press(from[0], from[1]);
    desk.drag(from[0] + 5, from[1], false);
    desk.drag((from[0] + 2 * to[0]) / 3, (from[1] + 2 * to[1]) / 3, false);
    save(desk, "dragging-forbidden");
    desk.release((from[0] + 2 * to[0]) / 3, (from[1] + 2 * to[1]) / 3);
    save(desk, "draft");
    desk.run(() -> desk.model.commands().undo());
    desk.press(from[0], from[1]);
    desk.drag(from[0] + 5, from[1] + 2, false);
    save(desk, "dragging-contact");
    desk.release(from[0] + 5, from[1] + 2);
    save(desk, "pinned");
    putIn(desk);
    save(desk, "putting-in");
    desk.key(KeyCode.ESCAPE);
    desk.run(() -> Look.dress(desk.window, SETTINGS.with(Theme.DARK)));
    save(desk, "dark");
    desk.run(() -> desk.window.showPreview());
    save(desk, "preview");
    desk.run(() -> desk.window.showPreview());
    sizesAndUnits(desk);
    desk.run(() -> workshop.menu().getItems().get(0).getOnAction().handle(null));
    studio(workshop);
    desk.close();
    assertThat(Files.exists(INTO.resolve("draft.png"))).isTrue();
  }

  private static void sizesAndUnits(OpenDesk desk) {
    desk.run(() -> Look.dress(desk.window, SETTINGS.with(200)));
    save(desk, "large");
    desk.run(() -> Look.dress(desk.window, SETTINGS));
    desk.run(() -> desk.model.see(new Sight(PaperSize.LETTER, Optional.of(LengthUnit.INCHES))));
    save(desk, "inch");
  }

  /** A form, then a column plan. */
  private static void studio(Workshop workshop) {
    Scene scene = workshop.window("studio.title").orElseThrow().getScene();
    Picture.save(scene, INTO.resolve("studio.png"));
    Screen.on(
        () -> {
          choose(scene.getRoot());
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          return null;
        });
    Picture.save(scene, INTO.resolve("column-plan.png"));
  }

  @SuppressWarnings("unchecked")
  private static void choose(Parent studio) {
    ComboBox<Section> sections = Scenes.all(studio, ComboBox.class).get(0);
    sections.setValue(Section.PLANS);
    Scenes.all(studio, ListView.class).stream()
        .filter(list -> "studio-things".equals(list.getId()))
        .forEach(list -> list.getSelectionModel().select(1));
  }

  /** With the menus and the ways to begin that the program's window has. */
  private Workshop withWorkshop(OpenDesk desk) {
    Workshop[] made = new Workshop[1];
    desk.run(
        () -> {
          Words words = Words.english();
          SettingsViewModel settings = SettingsViewModel.of(SETTINGS);
          Workshop.Around around = new Workshop.Around(settings, desk.window.leaving(), folder);
          made[0] = new Workshop(words, desk.model, around, desk.stage);
          desk.window.add(made[0].menu());
          desk.window.offer(words.of("start.paste"), made[0]::paste);
        });
    return made[0];
  }

  /** The first that waits, in the hand over the layer. */
  private static void putIn(OpenDesk desk) {
    String waits = desk.model.work().plan().get().orElseThrow().load().leftOut().get(0).pieceId();
    desk.run(
        () -> {
          desk.picture().requestFocus();
          desk.model.choosePiece(waits);
        });
    desk.key(KeyCode.INSERT);
  }

  private static void save(OpenDesk desk, String name) {
    Picture.save(desk.stage.getScene(), INTO.resolve(name + ".png"));
  }
}
