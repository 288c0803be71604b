package shelfful.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Parent;
import javafx.scene.control.TabPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.FiringFolder;
import shelfful.measure.LengthUnit;
import shelfful.record.Grade;
import shelfful.studio.Studio;
import shelfful.ui.figures.FiguresPane;
import shelfful.ui.figures.FiguresViewModel;
import shelfful.ui.firings.FiringBook;
import shelfful.ui.firings.FiringsPane;
import shelfful.ui.firings.UnpackingViewModel;
import shelfful.ui.learned.LearnedPane;
import shelfful.ui.learned.LearnedViewModel;
import shelfful.ui.learned.StudioDoor;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.Look;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.look.Settings;
import shelfful.ui.look.Theme;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.why.RemedyCards;
import shelfful.ui.why.WhyPane;
import shelfful.ui.why.WhyViewModel;
import shelfful.ui.words.Language;
import shelfful.ui.words.Words;
import shelfful.ui.worth.Thoroughness;
import shelfful.ui.worth.Wishes;
import shelfful.ui.worth.WorthPane;
import shelfful.ui.worth.WorthViewModel;

/**
 * The windows that ask and look back, in every language, light and dark, at 100 and 200 %: no words
 * are cut short and everything can be named aloud. What was looked at is kept in {@code
 * target/pictures}.
 */
class StudiesLayoutTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final Decimals DOT = new Decimals(NumberStyle.DOT);
  private static final WhyViewModel WHY = looked();
  private static final WorthViewModel WORTH = measured();

  @TempDir private static Path folder;

  private final List<String> cut = new ArrayList<>();

  private static WhyViewModel looked() {
    WhyViewModel why =
        new WhyViewModel(Words.english(), new SameThreadTaskRunner(), remedy -> true);
    why.look(Optional.of(SmallPlan.mixed()));
    why.search(false);
    return why;
  }

  private static WorthViewModel measured() {
    WorthViewModel worth =
        new WorthViewModel(
            Words.english(), new SameThreadTaskRunner(), DemoStudio::studio, () -> DAY);
    worth.add("list", SmallPlan.roomy());
    worth.measure(new Wishes("", "12", "25", Thoroughness.QUICK));
    return worth;
  }

  private void everywhere(String name, Supplier<Pane> maker) {
    for (Language language : Language.values()) {
      for (int scale : List.of(100, 200)) {
        Theme theme = scale == 100 ? Theme.LIGHT : Theme.DARK;
        Settings settings = Settings.usual(Locale.ROOT).with(language).with(scale).with(theme);
        look(name, settings, maker.get());
      }
    }
    look(name, Settings.usual(Locale.ROOT).with(Theme.DARK), maker.get());
    assertThat(cut).isEmpty();
  }

  /** Makes a pane in some words. */
  private interface Pane {
    Parent in(Words words);
  }

  private void look(String name, Settings settings, Pane pane) {
    Words words = Words.in(settings.language());
    try (Scenes window =
        Scenes.open(
            () -> {
              Parent made = pane.in(words);
              made.getStylesheets()
                  .add(Parent.class.getResource("/shelfful/ui/desk/studies.css").toExternalForm());
              Look.dressTabs(made);
              return made;
            },
            settings,
            1180,
            780)) {
      String told =
          (name + "-" + settings.language() + "-" + settings.scale() + "-" + settings.theme())
              .toLowerCase(Locale.ROOT);
      see(window, told);
      for (TabPane tabs : window.all(TabPane.class)) {
        for (int i = 1; i < tabs.getTabs().size(); i++) {
          int tab = i;
          window.run(() -> tabs.getSelectionModel().select(tab));
          see(window, told + "-" + i);
        }
      }
    }
  }

  private void see(Scenes window, String name) {
    window.picture(name);
    window.cutShort().forEach(words -> cut.add(name + ": " + words));
    assertThat(window.silent()).as(name).isEmpty();
  }

  @Test
  void whyHasRoomForItsWords() {
    everywhere(
        "why",
        () ->
            words ->
                new WhyPane(
                    words,
                    WHY,
                    new RemedyCards(words, WHY, () -> LengthUnit.MILLIMETRES),
                    new SimpleStringProperty(words.of("room.more", 46, 3, 49))));
  }

  @Test
  void whatToBuyHasRoomForItsWords() {
    everywhere("worth", () -> words -> new WorthPane(words, WORTH, Optional::empty, () -> DOT));
  }

  @Test
  void firingsHaveRoomForTheirWords() {
    FiringBook book = book("firings");
    book.begin(SmallPlan.load());
    UnpackingViewModel marking =
        new UnpackingViewModel(Words.english(), new SameThreadTaskRunner(), book);
    for (Grade grade : List.of(Grade.SECOND, Grade.LOST, Grade.GOOD)) {
      marking.choose(marking.rows().get().get(grade.ordinal()).pieceId());
      marking.mark(grade, "crawled");
    }
    everywhere(
        "firings",
        () ->
            words ->
                new FiringsPane(
                    words,
                    book,
                    new UnpackingViewModel(words, new SameThreadTaskRunner(), book),
                    new FiringsPane.Doors(
                        () -> {}, Optional::empty, Optional::empty, Optional::empty)));
  }

  private static FiringBook book(String name) {
    return new FiringBook(
        Words.english(),
        new SameThreadTaskRunner(),
        new FiringFolder(folder.resolve(name)),
        () -> DAY);
  }

  private static FiringBook madeUp() {
    FiringBook book = book("none");
    book.showMadeUp(DemoStudio.studio());
    return book;
  }

  private record Door() implements StudioDoor {
    @Override
    public ObservableValue<Studio> studio() {
      return new SimpleObjectProperty<>(DemoStudio.studio());
    }

    @Override
    public Optional<String> change(String name, UnaryOperator<Studio> change) {
      return Optional.empty();
    }
  }

  @Test
  void whatWasLearnedHasRoomForItsWords() {
    FiringBook book = madeUp();
    everywhere(
        "learned",
        () ->
            words ->
                new LearnedPane(
                    words,
                    new LearnedViewModel(
                        words, new SameThreadTaskRunner(), book.firings(), new Door()),
                    book.madeUp(),
                    () -> DOT));
  }

  @Test
  void figuresHaveRoomForTheirWords() {
    FiringBook book = madeUp();
    everywhere(
        "figures",
        () ->
            words -> {
              FiguresViewModel figures = new FiguresViewModel(words, book.firings());
              figures.price("0.30", "5");
              return new FiguresPane(
                  words, figures, new SimpleBooleanProperty(true), Optional::empty, () -> DOT);
            });
  }
}
