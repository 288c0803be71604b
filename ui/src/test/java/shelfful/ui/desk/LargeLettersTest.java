package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.ListCell;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.ui.DemoPlan;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.kilnview.KilnView;
import shelfful.ui.look.Look;
import shelfful.ui.look.Settings;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

/** The desk on a screen of 1280 by 800, under the title bar of its window. */
class LargeLettersTest {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 760;

  /** What has to be in sight: rows of pieces, and a shelf of so many pixels. */
  private static final int ROWS = 5;

  private static final double PICTURE = 250;

  @TempDir private Path folder;

  private DeskViewModel opened;

  private void desk(Language language, int scale, Consumer<Scenes> look) {
    Words words = Words.in(language);
    DeskViewModel model =
        new DeskViewModel(
            words,
            new SameThreadTaskRunner(),
            SearchLength.ofSteps(0),
            new RecoveryFolder(folder.resolve("recovery")));
    opened = model;
    Settings settings = Settings.usual(Locale.ROOT).with(language).with(scale);
    DeskWindow[] made = new DeskWindow[1];
    try (Scenes window =
        Scenes.open(
            () -> {
              made[0] = new DeskWindow(words, model, new SetPlaces());
              made[0].offerWhy(words.of("studies.why"), () -> {});
              return made[0];
            },
            settings,
            WIDTH,
            HEIGHT)) {
      window.run(() -> model.open(DemoPlan.file(folder)));
      window.picture("desk-1280-" + language.name().toLowerCase(Locale.ROOT) + "-" + scale);
      look.accept(window);
    }
  }

  /** Rows with something in them that are seen from edge to edge. */
  private static <C extends IndexedCell<?>> int whole(Scenes window, Class<C> type) {
    return Screen.on(
        () ->
            (int)
                window.all(type).stream()
                    .filter(cell -> !cell.isEmpty())
                    .filter(LargeLettersTest::isWhole)
                    .count());
  }

  private static boolean isWhole(Node node) {
    Bounds own = node.localToScene(node.getLayoutBounds());
    for (Node one = node; one != null; one = one.getParent()) {
      if (!one.isVisible()) {
        return false;
      }
      Node clip = one.getClip();
      if (clip != null) {
        Bounds seen = one.localToScene(clip.getBoundsInParent());
        if (own.getMinY() < seen.getMinY() - 1 || own.getMaxY() > seen.getMaxY() + 1) {
          return false;
        }
      }
    }
    return own.getMinY() >= 0 && own.getMaxY() <= HEIGHT;
  }

  @Test
  void listsAndPictureAreUsableAtEverySizeOfLetters() {
    for (Language language : Language.offered()) {
      for (int scale : Settings.SCALES) {
        desk(language, scale, window -> isUsable(window, language + " " + scale));
      }
    }
  }

  private static void isUsable(Scenes window, String what) {
    ShelfView picture = window.all(ShelfView.class).get(0);
    assertThat(picture.getHeight()).as(what).isGreaterThan(PICTURE);
    assertThat(picture.getWidth()).as(what).isGreaterThan(PICTURE);
    assertThat(whole(window, TableRow.class)).as(what).isGreaterThanOrEqualTo(ROWS);
    assertThat(window.cutShort()).as(what).isEmpty();
    int waits = whole(window, ListCell.class);
    for (TabPane tabs : window.all(TabPane.class)) {
      for (Tab tab : tabs.getTabs()) {
        window.run(() -> tabs.getSelectionModel().select(tab));
        assertThat(window.cutShort()).as(what + " " + tab.getText()).isEmpty();
        assertThat(window.silent()).as(what + " " + tab.getText()).isEmpty();
        waits += whole(window, ListCell.class);
      }
    }
    assertThat(waits).as(what).isPositive();
    assertThat(window.all(KilnView.class)).as(what).hasSize(1);
  }

  @Test
  void everyPartComesBackToItsPlaceWhenTheLettersAreSmallAgain() {
    desk(
        Language.ENGLISH,
        200,
        window -> {
          Settings usual = Settings.usual(Locale.ROOT);
          window.run(() -> Look.dress(window.all(DeskWindow.class).get(0), usual));
          assertThat(window.all(TabPane.class)).isEmpty();
          assertThat(window.all(SplitPane.class).get(0).getItems()).hasSize(3);
          isUsable(window, "100 again");
          window.run(() -> Look.dress(window.all(DeskWindow.class).get(0), usual.with(200)));
          assertThat(window.all(TabPane.class)).hasSize(1);
          isUsable(window, "200 again");
        });
  }

  @Test
  void nothingMovesWhenAMessageComes() {
    desk(
        Language.ENGLISH,
        100,
        window -> {
          String line = "A message of many lines. ".repeat(12);
          List<String> lines = Collections.nCopies(8, line);
          window.run(() -> opened.tell(new Notice(line, lines)));
          assertThat(window.all(TabPane.class)).isEmpty();
        });
  }
}
