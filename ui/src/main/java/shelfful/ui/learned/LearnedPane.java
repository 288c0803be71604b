package shelfful.ui.learned;

import java.util.List;
import java.util.function.Supplier;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import shelfful.learning.CellRate;
import shelfful.learning.Flaw;
import shelfful.learning.Trait;
import shelfful.learning.ZoneSuggestion;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.Em;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.look.PlainTable;
import shelfful.ui.look.Scrolled;
import shelfful.ui.words.Words;

/** The map of the kiln with what is suggested under it, and the tables beside it. */
public final class LearnedPane extends BorderPane {
  /** The map's width at 100 %. */
  private static final double MAP = 580;

  private final Words words;
  private final LearnedViewModel model;
  private final Supplier<Decimals> decimals;
  private final KilnMapView map = new KilnMapView();
  private final VBox suggestions = new VBox();
  private final ComboBox<String> kilns = new ComboBox<>();
  private final ComboBox<Trait> traits = new ComboBox<>();
  private final PlainTable<CellRate> table;
  private boolean following;

  /**
   * Shows what the view model holds.
   *
   * @param madeUp whether the firings never were, which is said
   * @param decimals writes figures as the person reads them
   */
  public LearnedPane(
      Words words,
      LearnedViewModel model,
      ObservableBooleanValue madeUp,
      Supplier<Decimals> decimals) {
    this.words = words;
    this.model = model;
    this.decimals = decimals;
    getStyleClass().add("learned-pane");
    table = table();
    Label banner = Lines.during(madeUp, words.of("book.banner"), "told", "wrong", "strong");
    setTop(new VBox(bar(), banner, Lines.following(model.told(), "told")));
    VBox page =
        new VBox(
            Lines.of(words.of("learned.map"), "heading"),
            map,
            Lines.of(words.of("learned.mapNote"), "quiet"),
            suggestions);
    page.getStyleClass().add("page");
    suggestions.getStyleClass().add("page-part");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox right = new VBox(new Labelled(words.of("learned.traits"), traits), table);
    right.getStyleClass().add("list-side");
    SplitPane split = new SplitPane(scroll, Scrolled.of(right));
    split.setDividerPositions(0.56);
    setCenter(split);
    model.learned().addListener((property, was, is) -> follow());
    model.kilns().addListener((property, was, is) -> follow());
    model.studio().addListener((property, was, is) -> follow());
    keepMapReadable(banner);
    follow();
  }

  /** Wide enough for its figures at any size of letters; the page then scrolls sideways. */
  private void keepMapReadable(Label letters) {
    map.minWidthProperty().bind(Em.of(letters, MAP));
  }

  private FlowPane bar() {
    kilns.setConverter(new ByWords<>(this::kiln));
    kilns
        .valueProperty()
        .addListener(
            (property, was, is) -> {
              if (!following && is != null) {
                model.chooseKiln(is);
              }
            });
    ComboBox<Flaw> flaws = new ComboBox<>();
    flaws.getItems().setAll(Flaw.values());
    flaws.setConverter(new ByWords<>(one -> words.of("flaw", one)));
    flaws.setValue(model.flaw().get());
    flaws.valueProperty().addListener((property, was, is) -> model.count(is));
    traits.getItems().setAll(Trait.values());
    traits.setConverter(new ByWords<>(one -> words.of("trait", one)));
    traits.setValue(Trait.GLAZE);
    traits.valueProperty().addListener((property, was, is) -> follow());
    FlowPane bar =
        new FlowPane(
            new Labelled(words.of("learned.kiln"), kilns),
            new Labelled(words.of("learned.flaw"), flaws));
    bar.getStyleClass().add("tool-bar-row");
    bar.setHgap(16);
    bar.setVgap(6);
    return bar;
  }

  private String kiln(String id) {
    return model.studio().getValue().kiln(id).map(one -> one.name()).orElse(id);
  }

  private HabitWords said() {
    return new HabitWords(words, decimals.get(), model.studio().getValue());
  }

  private PlainTable<CellRate> table() {
    return new PlainTable<CellRate>(words.of("learned.table"), words.of("learned.empty"))
        .column(words.of("learned.cell"), rate -> said().cell(rate))
        .column(words.of("learned.rate"), rate -> said().rate(rate))
        .column(words.of("learned.intervals"), rate -> said().interval(rate))
        .column(words.of("learned.flawed"), rate -> said().counts(rate))
        .column(words.of("learned.verdict"), rate -> said().verdict(rate))
        .column(words.of("learned.rest"), rate -> said().rest(rate))
        .column(words.of("learned.chance"), rate -> said().chance(rate));
  }

  private void follow() {
    following = true;
    List<String> all = model.kilns().get();
    if (!kilns.getItems().equals(all)) {
      kilns.getItems().setAll(all);
    }
    kilns.setValue(model.kilnId().get().isEmpty() ? null : model.kilnId().get());
    following = false;
    Learned learned = model.learned().get();
    map.show(learned, said());
    table.show(learned.of(traits.getValue()));
    suggest(learned);
  }

  private void suggest(Learned learned) {
    suggestions.getChildren().setAll(Lines.of(words.of("learned.suggestions"), "heading"));
    if (learned.suggestions().isEmpty()) {
      suggestions.getChildren().add(Lines.of(words.of("learned.noSuggestions"), "quiet"));
    }
    learned.suggestions().forEach(one -> suggestions.getChildren().add(card(learned, one)));
  }

  private VBox card(Learned learned, ZoneSuggestion suggestion) {
    HabitWords said = said();
    String name = said.name(suggestion);
    Button accept =
        new Button(
            words.of("learned.accept", said.glaze(suggestion.glazeId()), said.zone(suggestion)));
    accept.setWrapText(true);
    accept.setMinHeight(Region.USE_PREF_SIZE);
    accept.setDisable(model.changesNothing(suggestion));
    accept.setOnAction(event -> model.accept(suggestion, name));
    VBox card = new VBox(Lines.of(said.why(learned, suggestion)), accept);
    if (accept.isDisable()) {
      card.getChildren().add(Lines.of(words.of("learned.standsAlready", name), "quiet"));
    }
    card.getStyleClass().add("group");
    return card;
  }
}
