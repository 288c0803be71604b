package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import shelfful.drawing.PaperSize;
import shelfful.drawing.Printing;
import shelfful.measure.LengthUnit;
import shelfful.review.InspectedWeek;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.look.Settings;
import shelfful.ui.look.Theme;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;
import shelfful.week.Hold;

class WeekPaneTest {
  private static final int WHAT_IF = 4;

  private final List<String> onDesk = new ArrayList<>();
  private final List<String> cut = new ArrayList<>();
  private WeekViewModel model;
  private WeekPane pane;

  private Scenes open(Settings settings) {
    Words words = Words.in(settings.language());
    SameThreadTaskRunner tasks = new SameThreadTaskRunner();
    model = new WeekViewModel(words, tasks, Optional.empty());
    Printing printing = Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES);
    WeekFileViewModel files = new WeekFileViewModel(words, tasks, model, () -> printing);
    NoWeekFiles places = new NoWeekFiles(firing -> onDesk.add(firing.firingId()));
    Scenes window =
        Scenes.open(
            () -> {
              pane = new WeekPane(words, model, files, places);
              return pane;
            },
            settings,
            1200,
            800);
    window.run(() -> model.begin(SmallWeek.planned()));
    return window;
  }

  private static Settings settings(Language language, int scale, Theme theme) {
    return Settings.usual(Locale.ROOT).with(language).with(scale).with(theme);
  }

  private void key(Scenes window, KeyCode code, boolean shift) {
    window.run(
        () ->
            Event.fireEvent(
                pane.calendar(),
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false)));
  }

  private RowList firings(Scenes window) {
    return window.called("week-firings", RowList.class);
  }

  @Test
  void theMenuAsksBeforeAnotherWeekTakesThePlace() {
    for (boolean mayLeave : new boolean[] {false, true}) {
      AtomicInteger asked = new AtomicInteger();
      WeekMenu menu = menu(new NoWeekFiles(mayLeave, asked, firing -> {}));
      menu.getMenus().get(0).getItems().get(0).fire();
      assertThat(asked.get()).isEqualTo(mayLeave ? 1 : 0);
    }
    Optional<InspectedWeek> before = model.week();
    menu(new NoWeekFiles(false, new AtomicInteger(), firing -> {}))
        .getMenus()
        .get(0)
        .getItems()
        .get(1)
        .fire();
    assertThat(model.week()).isEqualTo(before);
    assertThat(model.planning().get()).isFalse();
  }

  private WeekMenu menu(WeekPlaces places) {
    return Screen.on(
        () -> {
          SameThreadTaskRunner tasks = new SameThreadTaskRunner();
          model = new WeekViewModel(Words.english(), tasks, Optional.empty());
          model.begin(SmallWeek.planned());
          Printing printing = Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES);
          return new WeekMenu(
              Words.english(),
              model,
              new WeekFileViewModel(Words.english(), tasks, model, () -> printing),
              places);
        });
  }

  @Test
  void calendarAndListHaveOneChoice() {
    try (Scenes window = open(settings(Language.ENGLISH, 100, Theme.LIGHT))) {
      String second = SmallWeek.planned().plan().firings().get(1).id();
      key(window, KeyCode.RIGHT, false);
      assertThat(model.chosen().get()).isEqualTo(second);
      assertThat(firings(window).getSelectionModel().getSelectedItem().firingId())
          .isEqualTo(second);
      assertThat(pane.calendar().getAccessibleText()).contains(second);
      window.run(() -> firings(window).getSelectionModel().select(2));
      assertThat(model.chosen().get()).isEqualTo(SmallWeek.planned().plan().firings().get(2).id());
    }
  }

  @Test
  void aFiringIsMovedFrozenAndOpenedByKeysAlone() {
    try (Scenes window = open(settings(Language.ENGLISH, 100, Theme.LIGHT))) {
      String id = model.chosen().get();
      LocalDate before = model.chosenFiring().orElseThrow().times().loads().toLocalDate();
      key(window, KeyCode.RIGHT, true);
      assertThat(model.carry().carries()).isTrue();
      key(window, KeyCode.ENTER, false);
      assertThat(model.plan().orElseThrow().firing(id).orElseThrow().times().loads().toLocalDate())
          .isAfter(before);
      window.run(() -> model.choose(id));
      key(window, KeyCode.F, false);
      assertThat(model.chosenFiring().orElseThrow().hold()).isEqualTo(Hold.FREE);
      key(window, KeyCode.F, false);
      assertThat(model.chosenFiring().orElseThrow().hold()).isEqualTo(Hold.ALL);
      key(window, KeyCode.ENTER, false);
      assertThat(onDesk).containsExactly(id);
    }
  }

  @Test
  void everythingThatTakesTheFocusHasAName() {
    try (Scenes window = open(settings(Language.ENGLISH, 100, Theme.LIGHT))) {
      for (int list = 0; list <= WHAT_IF; list++) {
        int number = list;
        window.run(() -> pane.showList(number));
        assertThat(window.silent()).as("list " + list).isEmpty();
      }
    }
  }

  @Test
  void theWeekHasRoomForItsWords() {
    for (Language language : Language.values()) {
      for (int scale : List.of(100, 150, 200)) {
        look(settings(language, scale, scale == 150 ? Theme.DARK : Theme.LIGHT));
      }
    }
    assertThat(cut).isEmpty();
  }

  private void look(Settings settings) {
    String name = ("week-" + settings.language() + "-" + settings.scale()).toLowerCase(Locale.ROOT);
    try (Scenes window = open(settings)) {
      for (int list = 0; list <= WHAT_IF; list++) {
        int number = list;
        window.run(() -> pane.showList(number));
        window.picture(name + "-" + number);
        window.cutShort().forEach(words -> cut.add(name + " " + number + ": " + words));
      }
      window.run(
          () ->
              model
                  .whatIf()
                  .outOfOrder("front", LocalDate.of(2026, 6, 1), LocalDate.of(2026, 6, 3)));
      window.run(() -> model.carry().byDays(1));
      window.picture(name + "-tried");
      window.cutShort().forEach(words -> cut.add(name + " tried: " + words));
    }
  }
}
