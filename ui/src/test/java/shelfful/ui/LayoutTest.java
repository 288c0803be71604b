package shelfful.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.measure.LengthUnit;
import shelfful.ui.batches.BatchListViewModel;
import shelfful.ui.batches.BatchPane;
import shelfful.ui.batches.ColumnMemory;
import shelfful.ui.desk.DeskViewModel;
import shelfful.ui.desk.DeskWindow;
import shelfful.ui.desk.SetPlaces;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.look.Settings;
import shelfful.ui.look.SettingsPane;
import shelfful.ui.look.SettingsViewModel;
import shelfful.ui.look.Theme;
import shelfful.ui.steps.Steps;
import shelfful.ui.studio.Manner;
import shelfful.ui.studio.Section;
import shelfful.ui.studio.StudioPane;
import shelfful.ui.studio.StudioViewModel;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;

/**
 * Every window in every language, at every size of letters, light and dark: no words are cut short
 * and everything can be named aloud. What was looked at is kept in {@code target/pictures}.
 */
class LayoutTest {
  private static final String PASTED =
      "Form\tMenge\tGlaze\tQuantity\nMug\t1\tclear gloss\t12,0\nmugg\t2\tclear gloss\t12,5,0\n"
          + "Latte bowl\t3\tchrome green\t4\n";

  @TempDir private static Path folder;

  private final List<String> cut = new ArrayList<>();
  private int pictures;

  private static Settings settings(Language language, int scale, Theme theme) {
    return Settings.usual(Locale.ROOT).with(language).with(scale).with(theme);
  }

  private void look(Scenes window, String name) {
    window.picture(name);
    pictures++;
    window.cutShort().forEach(words -> cut.add(name + ": " + words));
    assertThat(window.silent()).as(name).isEmpty();
  }

  @Test
  void theStudioHasRoomForItsWords() {
    for (Language language : Language.values()) {
      for (int scale : List.of(100, 150, 200)) {
        Theme theme = scale == 150 ? Theme.DARK : Theme.LIGHT;
        studio(settings(language, scale, theme), Section.values());
      }
    }
    assertThat(cut).isEmpty();
    assertThat(pictures).isGreaterThanOrEqualTo(30);
  }

  private void studio(Settings settings, Section... sections) {
    Words words = Words.in(settings.language());
    StudioViewModel model =
        new StudioViewModel(
            new Manner(words, settings.unit(), settings.numbers()),
            DemoStudio.studio(),
            new Steps());
    try (Scenes window =
        Scenes.open(
            () ->
                new StudioPane(
                    words, model, new StudioPane.Files(Optional::empty, Optional::empty)),
            settings,
            1180,
            790)) {
      for (Section section : sections) {
        window.run(() -> model.choose(section));
        if (section == Section.FORMS) {
          window.run(() -> model.choose(4));
        }
        look(window, name("studio", settings) + "-" + section.name().toLowerCase(Locale.ROOT));
      }
    }
  }

  private static String name(String what, Settings settings) {
    return (what + "-" + settings.language() + "-" + settings.scale() + "-" + settings.theme())
        .toLowerCase(Locale.ROOT);
  }

  @Test
  void theStudioReadsInInchesAndWithACommaWithoutCuttingWords() {
    studio(settings(Language.ENGLISH, 100, Theme.DARK).with(LengthUnit.INCHES), Section.values());
    studio(
        settings(Language.GERMAN, 125, Theme.LIGHT)
            .with(LengthUnit.CENTIMETRES)
            .with(NumberStyle.COMMA),
        Section.FORMS);
    assertThat(cut).isEmpty();
  }

  @Test
  void theBatchListAndThePreviewOfAPasteHaveRoomForTheirWords() {
    for (Language language : Language.values()) {
      for (int scale : List.of(100, 200)) {
        Theme theme = scale == 100 ? Theme.LIGHT : Theme.DARK;
        batches(settings(language, scale, theme));
      }
    }
    assertThat(cut).isEmpty();
  }

  private void batches(Settings settings) {
    Words words = Words.in(settings.language());
    BatchListViewModel model = new BatchListViewModel(words, DemoStudio.studio(), new Steps());
    model.open(Path.of("..", "demo-data", "list-60.csv"));
    model.edit(2, "quantity", "12,5,0");
    BatchPane.Surroundings around =
        new BatchPane.Surroundings(
            Optional::empty,
            Optional::empty,
            () -> Optional.of(PASTED),
            ColumnMemory.ofThisRun(),
            () -> {});
    BatchPane[] pane = new BatchPane[1];
    try (Scenes window =
        Scenes.open(
            () -> {
              pane[0] = new BatchPane(words, model, around);
              return pane[0];
            },
            settings,
            1270,
            790)) {
      look(window, name("batches", settings));
      window.run(pane[0]::paste);
      look(window, name("paste", settings));
    }
  }

  @Test
  void theDeskHasRoomForItsWords() {
    for (Language language : Language.offered()) {
      for (int scale : Settings.SCALES) {
        Theme theme = scale == 125 ? Theme.DARK : Theme.LIGHT;
        desk(settings(language, scale, theme));
      }
    }
    desk(settings(Language.PSEUDO, 100, Theme.DARK));
    assertThat(cut).isEmpty();
  }

  private void desk(Settings settings) {
    DeskViewModel model =
        new DeskViewModel(
            Words.in(settings.language()),
            new SameThreadTaskRunner(),
            SearchLength.ofSteps(0),
            new RecoveryFolder(folder.resolve("recovery")));
    try (Scenes window =
        Scenes.open(
            () -> new DeskWindow(Words.in(settings.language()), model, new SetPlaces()),
            settings,
            1270,
            790)) {
      look(window, name("start", settings));
      window.run(() -> model.open(DemoPlan.file(folder)));
      look(window, name("desk", settings));
    }
  }

  @Test
  void theSettingsHaveRoomForTheirWords() {
    for (Language language : Language.values()) {
      for (int scale : Settings.SCALES) {
        Settings settings = settings(language, scale, Theme.LIGHT);
        try (Scenes window = Scenes.open(() -> settingsPane(settings), settings, 760, 560)) {
          look(window, name("settings", settings));
        }
      }
    }
    assertThat(cut).isEmpty();
  }

  private static Parent settingsPane(Settings settings) {
    ScrollPane pane =
        new ScrollPane(
            new SettingsPane(Words.in(settings.language()), SettingsViewModel.of(settings)));
    pane.setFitToWidth(true);
    pane.setFocusTraversable(false);
    return pane;
  }
}
