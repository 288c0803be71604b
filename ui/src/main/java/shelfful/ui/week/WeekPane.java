package shelfful.ui.week;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.ui.calendar.CalendarPicture;
import shelfful.ui.calendar.CalendarView;
import shelfful.ui.calendar.CalendarWords;
import shelfful.ui.calendar.PatternKey;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** The whole window: the calendar over its lists, kept in step with the view model. */
public final class WeekPane extends BorderPane {
  /** Lines of letters from which a window is high enough for the key. */
  private static final double KEY_FROM = 50;

  private final Words words;
  private final WeekViewModel model;
  private final CalendarView calendar;
  private final RowList firings;
  private final RowList late;
  private final RowList waiting;
  private final VBox totals = new VBox();
  private final TabPane lists = new TabPane();

  /** Wires a window to a view model. */
  public WeekPane(Words words, WeekViewModel model, WeekFileViewModel files, WeekPlaces places) {
    this.words = words;
    this.model = model;
    calendar = new CalendarView(calendarWords(words), new WeekGestures(model, places));
    firings = list("week.firingsText", "week.firingsEmpty");
    late = list("week.lateText", "week.lateEmpty");
    waiting = list("week.waitingText", "week.waitingEmpty");
    firings.setId("week-firings");
    getStyleClass().add("week");
    getStylesheets().add(WeekPane.class.getResource("week.css").toExternalForm());
    new WeekKeys(model, calendar, places).listen();
    setTop(
        new VBox(
            new WeekMenu(words, model, files, places),
            new WeekButtons(words, model, calendar, places),
            sentence(model.state(), "strong"),
            sentence(model.notice(), "told")));
    SplitPane both = new SplitPane(upper(), lists());
    both.setOrientation(Orientation.VERTICAL);
    both.setDividerPositions(0.62);
    setCenter(both);
    model.shown().addListener((property, was, is) -> is.ifPresent(this::show));
    model.chosen().addListener((property, was, is) -> mark(is));
    model.carry().place().addListener(changed -> hover());
    model.shown().get().ifPresent(this::show);
  }

  private RowList list(String text, String empty) {
    return new RowList(words.of(text), words.of(empty), model::choose);
  }

  private static CalendarWords calendarWords(Words words) {
    return new CalendarWords(
        new Moments(words)::days,
        List.of(words.of("week.handsOn"), words.of("week.handsOnShort")),
        List.of(words.of("week.heating"), words.of("week.heatingShort")),
        List.of(words.of("week.cooling"), words.of("week.coolingShort")),
        List.of(words.of("week.outOfOrder"), words.of("week.outOfOrderShort")));
  }

  private static Label sentence(javafx.beans.property.ReadOnlyStringProperty text, String style) {
    return Lines.following(text, "week-line", style);
  }

  private VBox upper() {
    VBox.setVgrow(calendar, Priority.ALWAYS);
    return new VBox(calendar, sentence(model.carry().told(), "told"), key());
  }

  /** What the patterns mean. */
  private FlowPane key() {
    FlowPane key = new FlowPane();
    key.getStyleClass().add("week-key");
    // In a low window with large letters the calendar needs the room; its bars have words as well.
    key.visibleProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> getHeight() > KEY_FROM * calendar.letters(),
                heightProperty(),
                calendar.heightProperty()));
    key.managedProperty().bind(key.visibleProperty());
    key.getChildren()
        .addAll(
            pattern(PatternKey.Pattern.HANDS_ON, "week.keyHandsOn"),
            pattern(PatternKey.Pattern.HEATING, "week.keyHeating"),
            pattern(PatternKey.Pattern.COOLING, "week.keyCooling"),
            pattern(PatternKey.Pattern.OUT_OF_ORDER, "week.keyOutOfOrder"),
            new Label(words.of("week.keyHours")),
            new Label(words.of("week.keyHeld")));
    return key;
  }

  private HBox pattern(PatternKey.Pattern pattern, String key) {
    HBox both = new HBox(new PatternKey(pattern), new Label(words.of(key)));
    both.getStyleClass().add("week-key-entry");
    return both;
  }

  private TabPane lists() {
    lists.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    lists.setAccessibleText(words.of("week.listsText"));
    totals.getStyleClass().add("week-totals");
    lists
        .getTabs()
        .addAll(
            tab("week.firings", firings),
            tab("week.lateTab", late),
            tab("week.waitingTab", waiting),
            tab("week.totals", scrolled(totals)),
            tab("week.whatIf", scrolled(new WhatIfPane(words, model))));
    return lists;
  }

  private Tab tab(String key, Node content) {
    return new Tab(words.of(key), content);
  }

  private static ScrollPane scrolled(Node content) {
    ScrollPane pane = new ScrollPane(content);
    pane.setFitToWidth(true);
    pane.setFocusTraversable(false);
    return pane;
  }

  private void show(ShownWeek week) {
    calendar.show(week.picture());
    firings.show(week.firings());
    late.show(week.late());
    waiting.show(week.waiting());
    totals.getChildren().setAll(week.totals().stream().map(line -> Lines.of(line)).toList());
    totals.getChildren().add(quiet("week.cautionOpen"));
    totals.getChildren().add(quiet("week.cautionWiring"));
    mark(model.chosen().get());
  }

  private Label quiet(String key) {
    return Lines.of(words.of(key), "quiet");
  }

  private void mark(String firingId) {
    calendar.mark(firingId);
    firings.mark(firingId);
    late.mark(firingId);
    String said =
        model.shown().get().stream()
            .flatMap(week -> week.firings().stream())
            .filter(row -> row.firingId().equals(firingId))
            .map(ShownWeek.Row::spoken)
            .findFirst()
            .orElse(words.of("week.firingsEmpty"));
    calendar.setAccessibleText(words.of("week.calendarText", said));
  }

  private void hover() {
    calendar.hover(
        model
            .carry()
            .place()
            .get()
            .flatMap(
                place ->
                    place
                        .times()
                        .map(
                            times ->
                                new CalendarPicture.Ghost(
                                    place.kilnId(),
                                    times,
                                    place.isAllowed(),
                                    model.carry().shortly()))));
  }

  /** Shows the list of this number, from 0. */
  void showList(int number) {
    lists.getSelectionModel().select(number);
  }

  CalendarView calendar() {
    return calendar;
  }
}
