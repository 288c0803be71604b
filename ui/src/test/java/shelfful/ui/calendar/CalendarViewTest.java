package shelfful.ui.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.look.Settings;
import shelfful.ui.look.Theme;

class CalendarViewTest {
  private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 6, 1, 0, 0);

  private final List<String> heard = new ArrayList<>();
  private CalendarView view;
  private Scenes window;

  private final class Heard implements CalendarGestures {
    @Override
    public void choose(String firingId) {
      heard.add("choose " + firingId);
    }

    @Override
    public void open(String firingId) {
      heard.add("open " + firingId);
    }

    @Override
    public void carry(String firingId, String kilnId, LocalDateTime loads) {
      heard.add("carry " + firingId + " " + kilnId + " " + loads);
    }

    @Override
    public void drop() {
      heard.add("drop");
    }

    @Override
    public void putBack() {
      heard.add("put back");
    }
  }

  @BeforeEach
  void open() {
    CalendarWords words =
        new CalendarWords(
            day -> List.of(day.toString(), Integer.toString(day.getDayOfMonth())),
            List.of("hands-on"),
            List.of("heating"),
            List.of("cooling"),
            List.of("out of order"));
    window =
        Scenes.open(
            () -> {
              view = new CalendarView(words, new Heard());
              return new StackPane(view);
            },
            Settings.usual(Locale.ROOT).with(Theme.LIGHT),
            1400,
            420);
    window.run(() -> view.show(CalendarLayoutTest.picture()));
  }

  @AfterEach
  void close() {
    window.close();
  }

  private CalendarLayout layout() {
    return view.laidOut().orElseThrow();
  }

  private CalendarLayout.Box box(String id) {
    return layout().bar(layout().picture().bar(id).orElseThrow()).orElseThrow();
  }

  private void mouse(EventType<MouseEvent> type, double x, double y, int clicks) {
    window.run(
        () -> {
          Point2D scene = view.localToScene(x, y);
          Event.fireEvent(
              view,
              new MouseEvent(
                  type,
                  scene.getX(),
                  scene.getY(),
                  scene.getX(),
                  scene.getY(),
                  MouseButton.PRIMARY,
                  clicks,
                  false,
                  false,
                  false,
                  false,
                  true,
                  false,
                  false,
                  true,
                  false,
                  false,
                  null));
        });
  }

  @Test
  void aClickChoosesAndADoubleClickOpens() {
    CalendarLayout.Box box = box("F2");
    mouse(MouseEvent.MOUSE_PRESSED, box.x() + 5, box.y() + 5, 1);
    mouse(MouseEvent.MOUSE_RELEASED, box.x() + 5, box.y() + 5, 1);
    mouse(MouseEvent.MOUSE_PRESSED, box.x() + 5, box.y() + 5, 2);
    assertThat(heard).containsExactly("choose F2", "choose F2", "open F2");
  }

  @Test
  void carryingAFiringTellsTheKilnAndTheTimeItWouldBeLoaded() {
    CalendarLayout.Box box = box("F1");
    double day = layout().window().perDay();
    double below = layout().rowHeight();
    mouse(MouseEvent.MOUSE_PRESSED, box.x() + 5, box.y() + 5, 1);
    mouse(MouseEvent.MOUSE_DRAGGED, box.x() + 5 + 2 * day, box.y() + 5 + below, 1);
    mouse(MouseEvent.MOUSE_RELEASED, box.x() + 5 + 2 * day, box.y() + 5 + below, 1);
    assertThat(heard)
        .containsExactly("choose F1", "carry F1 two " + MONDAY.plusDays(2).plusHours(8), "drop");
  }

  @Test
  void aPressThatHardlyMovesCarriesNothing() {
    CalendarLayout.Box box = box("F1");
    mouse(MouseEvent.MOUSE_PRESSED, box.x() + 5, box.y() + 5, 1);
    mouse(MouseEvent.MOUSE_DRAGGED, box.x() + 7, box.y() + 5, 1);
    mouse(MouseEvent.MOUSE_RELEASED, box.x() + 7, box.y() + 5, 1);
    assertThat(heard).containsExactly("choose F1");
  }

  @Test
  void heatingAndCoolingDifferInPatternWhenColoursAreTakenAway() {
    CalendarLayout.Box strip = layout().phases(box("F1"));
    double day = layout().window().perDay();
    Set<List<Long>> columns = new HashSet<>();
    WritableImage seen = Screen.on(() -> view.snapshot(null, null));
    List<Long> heating = greys(seen, strip.x() + day * 2.6 / 24, strip.y() + strip.height() / 4);
    List<Long> cooling = greys(seen, strip.x() + day * 12 / 24, strip.y() + strip.height() / 4);
    columns.add(heating);
    columns.add(cooling);
    assertThat(columns).hasSize(2);
    // Hatched and dotted: neither is one plain grey.
    assertThat(new HashSet<>(heating)).hasSizeGreaterThan(1);
    assertThat(new HashSet<>(cooling)).hasSizeGreaterThan(1);
  }

  /** The greys along a short line. */
  private static List<Long> greys(WritableImage image, double x, double y) {
    List<Long> greys = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      for (int row = 0; row < 6; row++) {
        Color colour = image.getPixelReader().getColor((int) x + i, (int) y + row);
        greys.add(Math.round(colour.grayscale().getBrightness() * 20));
      }
    }
    return greys;
  }

  @Test
  void whereAFiringMayNotStandIsHatchedAndNotOnlyRed() {
    CalendarPicture.Bar bar = layout().picture().bar("F1").orElseThrow();
    CalendarLayout.Box box = box("F1");
    double y = box.y() + box.height() / 2;
    window.run(
        () ->
            view.hover(
                Optional.of(new CalendarPicture.Ghost("one", bar.times(), true, "F1 here"))));
    WritableImage allowed = Screen.on(() -> view.snapshot(null, null));
    window.run(
        () ->
            view.hover(
                Optional.of(new CalendarPicture.Ghost("one", bar.times(), false, "F1 not"))));
    WritableImage forbidden = Screen.on(() -> view.snapshot(null, null));
    assertThat(new HashSet<>(greys(allowed, box.x() + 60, y))).hasSize(1);
    assertThat(new HashSet<>(greys(forbidden, box.x() + 60, y))).hasSizeGreaterThan(1);
  }

  @Test
  void zoomsAroundTheMiddleAndBackToAll() {
    double whole = layout().window().perDay();
    window.run(() -> view.zoomIn());
    assertThat(layout().window().perDay()).isGreaterThan(whole);
    window.run(() -> view.showDays(2));
    assertThat(layout().window().length() / layout().window().width()).isEqualTo(3.5);
    window.run(() -> view.mark("F2"));
    assertThat(box("F2").x()).isBetween(0.0, layout().window().width());
    window.run(() -> view.fit());
    assertThat(layout().window().perDay()).isEqualTo(whole);
  }
}
