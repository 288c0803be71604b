package shelfful.ui.worth;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.purchase.Worth;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.Em;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.look.PlainTable;
import shelfful.ui.look.Scrolled;
import shelfful.ui.words.Words;

/** Lists and wishes at the left; what each purchase is worth at the right. */
public final class WorthPane extends BorderPane {
  /** The width of the lists and wishes at 100 %. */
  private static final double WISHES = 290;

  private final Words words;
  private final WorthViewModel model;
  private final Supplier<Optional<Path>> toOpen;
  private final Supplier<Decimals> decimals;
  private final ListView<String> lists = new ListView<>();
  private final TextField thinner = new TextField();
  private final TextField firings = new TextField();
  private final TextField cost = new TextField();
  private final ComboBox<Thoroughness> thoroughness = new ComboBox<>();
  private final PlainTable<Worth> table;
  private final Label heading;

  /**
   * Shows what the view model holds.
   *
   * @param toOpen asks for a batch list; empty when there is none after all
   * @param decimals writes figures as the person reads them
   */
  public WorthPane(
      Words words,
      WorthViewModel model,
      Supplier<Optional<Path>> toOpen,
      Supplier<Decimals> decimals) {
    this.words = words;
    this.model = model;
    this.toOpen = toOpen;
    this.decimals = decimals;
    getStyleClass().add("worth-pane");
    table = table();
    heading = Lines.of(words.of("worth.lists"), "strong");
    setTop(new VBox(bar(), Lines.following(model.told(), "told")));
    ScrollPane wishes = Scrolled.of(wishes());
    wishes.minWidthProperty().bind(Em.of(heading, WISHES));
    SplitPane.setResizableWithParent(wishes, false);
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox measured = new VBox(table, Lines.following(model.method(), "quiet"));
    measured.getStyleClass().add("list-side");
    SplitPane split = new SplitPane(wishes, Scrolled.of(measured));
    split.setDividerPositions(0.3);
    setCenter(split);
    model.lists().addListener((ListChangeListener<Listed>) change -> follow());
    model.worths().addListener((ListChangeListener<Worth>) change -> table.show(model.worths()));
    follow();
    table.show(model.worths());
  }

  private FileBar bar() {
    Button measure = FileBar.button(words, "worth.measure", () -> model.measure(typed()));
    measure.getStyleClass().add("main-button");
    measure.disableProperty().bind(model.measuring());
    Button stop = FileBar.button(words, "worth.stop", model::stop);
    stop.disableProperty().bind(model.measuring().not());
    return new FileBar(words)
        .with("worth.add", () -> toOpen.get().ifPresent(model::add))
        .with("worth.remove", () -> model.remove(lists.getSelectionModel().getSelectedIndex()))
        .with(measure)
        .with(stop);
  }

  private Wishes typed() {
    return new Wishes(
        thinner.getText(), firings.getText(), cost.getText(), thoroughness.getValue());
  }

  private VBox wishes() {
    lists.setAccessibleText(words.of("worth.lists"));
    lists.setPlaceholder(Lines.of(words.of("worth.noLists")));
    lists.setPrefHeight(140);
    thoroughness.getItems().setAll(Thoroughness.values());
    thoroughness.setConverter(new ByWords<>(one -> words.of("thoroughness", one)));
    thoroughness.setValue(Thoroughness.USUAL);
    VBox wishes =
        new VBox(
            heading,
            lists,
            new Labelled(words.of("worth.thinner"), thinner),
            new Labelled(words.of("worth.firings"), firings),
            new Labelled(words.of("worth.cost"), cost),
            new Labelled(words.of("worth.thoroughness"), thoroughness));
    wishes.getStyleClass().add("list-side");
    return wishes;
  }

  private PlainTable<Worth> table() {
    return new PlainTable<Worth>(words.of("worth.table"), words.of("worth.empty"))
        .column(words.of("worth.verdict"), this::verdict)
        .column(words.of("worth.gain"), one -> decimals.get().signed(one.gain().mean(), 1))
        .column(words.of("worth.interval"), this::interval)
        .column(words.of("worth.saved"), this::saved)
        .column(words.of("worth.what"), one -> one.purchase().words());
  }

  /** Nothing is claimed that is not beyond the noise. */
  private String verdict(Worth worth) {
    return words.of(worth.gain().isClear() ? "worth.clear" : "worth.unclear");
  }

  private String interval(Worth worth) {
    return words.of(
        "worth.fromTo",
        decimals.get().signed(worth.gain().low(), 1),
        decimals.get().signed(worth.gain().high(), 1));
  }

  private String saved(Worth worth) {
    return worth.gain().isClear() && worth.savedPerMonth().isPresent()
        ? decimals.get().of(worth.savedPerMonth(), 2)
        : "–";
  }

  private void follow() {
    lists.getItems().setAll(model.lists().stream().map(Listed::name).toList());
  }
}
