package shelfful.ui.figures;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.figures.CauseCount;
import shelfful.figures.FiringFigures;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.Em;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.look.PlainTable;
import shelfful.ui.look.Scrolled;
import shelfful.ui.words.Words;

/** A page for each figure: drawn at the left, the same numbers in a table at the right. */
public final class FiguresPane extends BorderPane {
  /** The least height of a drawing at 100 %, in which its axis can be named. */
  private static final double CHART = 280;

  private final Words words;
  private final FiguresViewModel model;
  private final Supplier<Optional<Path>> toSave;
  private final Supplier<Decimals> decimals;
  private final TabPane tabs = new TabPane();
  private final TextField perKilowattHour = new TextField();
  private final TextField perFiring = new TextField();
  private final Map<Page, PlainTable<FiringFigures>> tables = new EnumMap<>(Page.class);
  private final Map<Page, BorderPane> charts = new EnumMap<>(Page.class);
  private final PlainTable<CauseCount> causes;

  /**
   * Shows what the view model holds.
   *
   * @param madeUp whether the firings never were, which is said
   * @param toSave asks where a table is saved; empty when not after all
   * @param decimals writes figures as the person reads them
   */
  public FiguresPane(
      Words words,
      FiguresViewModel model,
      ObservableBooleanValue madeUp,
      Supplier<Optional<Path>> toSave,
      Supplier<Decimals> decimals) {
    this.words = words;
    this.model = model;
    this.toSave = toSave;
    this.decimals = decimals;
    getStyleClass().add("figures-pane");
    causes = causes();
    for (Page page : Page.values()) {
      tabs.getTabs().add(tab(page));
    }
    tabs.setAccessibleText(words.of("figures.tabs"));
    Label banner = Lines.during(madeUp, words.of("book.banner"), "told", "wrong", "strong");
    setTop(new VBox(bar(), banner, Lines.following(model.told(), "told")));
    setCenter(tabs);
    charts.values().forEach(chart -> chart.minHeightProperty().bind(Em.of(banner, CHART)));
    model.figures().addListener((property, was, is) -> follow());
    follow();
  }

  private FlowPane bar() {
    perKilowattHour.textProperty().addListener((property, was, is) -> price());
    perFiring.textProperty().addListener((property, was, is) -> price());
    FlowPane bar =
        new FlowPane(
            new Labelled(words.of("figures.perKilowattHour"), perKilowattHour),
            new Labelled(words.of("figures.perFiring"), perFiring),
            FileBar.button(words, "figures.save", this::save));
    bar.getStyleClass().add("tool-bar-row");
    bar.setHgap(16);
    bar.setVgap(6);
    return bar;
  }

  private void price() {
    model.price(perKilowattHour.getText(), perFiring.getText());
  }

  private void save() {
    Page page = Page.values()[tabs.getSelectionModel().getSelectedIndex()];
    toSave.get().ifPresent(file -> model.save(page, file));
  }

  private Tab tab(Page page) {
    BorderPane chart = new BorderPane();
    charts.put(page, chart);
    VBox table = new VBox();
    table.getStyleClass().add("list-side");
    if (page == Page.CAUSES) {
      table.getChildren().add(causes);
      VBox.setVgrow(causes, Priority.ALWAYS);
    } else {
      PlainTable<FiringFigures> firings = firings(page);
      tables.put(page, firings);
      table.getChildren().add(firings);
      VBox.setVgrow(firings, Priority.ALWAYS);
    }
    SplitPane split = new SplitPane(Scrolled.of(chart), table);
    split.setDividerPositions(0.6);
    Tab tab = new Tab(words.of("figuresPage", page), split);
    tab.setClosable(false);
    return tab;
  }

  private PlainTable<FiringFigures> firings(Page page) {
    PlainTable<FiringFigures> table =
        new PlainTable<FiringFigures>(words.of("figures.table"), words.of("figures.empty"))
            .column(words.of("figures.day"), one -> one.day().toString());
    if (page == Page.COST) {
      return table
          .column(words.of("figures.costPerPiece"), one -> known(2, one.costPerPiece()))
          .column(words.of("figures.cost"), one -> known(2, one.cost()))
          .column(words.of("figures.kilowattHours"), one -> known(1, one.kilowattHours()))
          .column(words.of("figures.pieces"), one -> Integer.toString(one.pieces()));
    }
    table.column(words.of("figures.pieces"), one -> Integer.toString(one.pieces()));
    table.column(words.of("figures.limit"), one -> one.limit().map(Object::toString).orElse("–"));
    return page == Page.FILL ? table.column(words.of("figures.fill"), this::fill) : graded(table);
  }

  private PlainTable<FiringFigures> graded(PlainTable<FiringFigures> table) {
    return table
        .column(words.of("grade.good"), one -> Integer.toString(one.good()))
        .column(words.of("figures.seconds"), one -> Integer.toString(one.seconds()))
        .column(words.of("figures.lost"), one -> Integer.toString(one.lost()));
  }

  private String known(int places, OptionalDouble value) {
    return value.isPresent() ? decimals.get().of(value, places) : "–";
  }

  private String fill(FiringFigures one) {
    return one.fill().isPresent()
        ? words.of("learned.percent", decimals.get().percent(one.fill().getAsDouble(), 1))
        : "–";
  }

  private PlainTable<CauseCount> causes() {
    return new PlainTable<CauseCount>(words.of("figures.causeTable"), words.of("figures.empty"))
        .column(words.of("unpack.cause"), CauseCount::cause)
        .column(words.of("figures.seconds"), one -> Integer.toString(one.seconds()))
        .column(words.of("figures.lost"), one -> Integer.toString(one.lost()));
  }

  private void follow() {
    List<FiringFigures> firings = model.figures().get().firings();
    tables.values().forEach(table -> table.show(firings));
    causes.show(model.figures().get().causes());
    FigureCharts drawn = new FigureCharts(words, decimals.get());
    charts.forEach((page, pane) -> pane.setCenter(drawn.of(page, model)));
    charts
        .get(Page.COST)
        .setTop(model.costs().isEmpty() ? Lines.of(words.of("figures.askPrices"), "told") : null);
  }
}
