package shelfful.ui.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.studio.Studio;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.week.WhatIfViewModel.Trial;
import shelfful.ui.words.Words;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Stage;
import shelfful.week.KilnWork;
import shelfful.week.Program;
import shelfful.week.WeekRequest;

/** Three changes that can be tried, and what would come of one beside the week as it is. */
final class WhatIfPane extends VBox {
  private static final List<Stage> STAGES =
      List.of(Stage.LEATHER_HARD, Stage.BONE_DRY, Stage.BISQUE, Stage.GLAZED);

  private final Words words;
  private final WeekViewModel model;
  private final VBox result = new VBox();
  private Optional<Studio> studio = Optional.empty();
  private Optional<LocalDate> firstDay = Optional.empty();
  private Optional<LocalDate> lastDay = Optional.empty();

  WhatIfPane(Words words, WeekViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("week-what-if");
    result.getStyleClass().add("week-result");
    model.whatIf().trial().addListener((property, was, is) -> show(is));
    model.whatIf().told().addListener(changed -> show(model.whatIf().trial().get()));
    model.shown().addListener((property, was, is) -> is.ifPresent(this::follow));
    model.shown().get().ifPresent(this::follow);
  }

  private void follow(ShownWeek week) {
    WeekRequest request = week.week().plan().request();
    boolean same =
        studio.filter(request.studio()::equals).isPresent()
            && firstDay.filter(request.start().toLocalDate()::equals).isPresent()
            && lastDay.filter(request.lastDay()::equals).isPresent();
    if (!same) {
      studio = Optional.of(request.studio());
      firstDay = Optional.of(request.start().toLocalDate());
      lastDay = Optional.of(request.lastDay());
      getChildren().setAll(result, extra(request), broken(request), order(request));
    }
  }

  private <T> Choice<T> choice(String key, List<T> items, Function<T, String> name) {
    return new Choice<>(words.of(key), items, name);
  }

  private Choice<LocalDate> day(String key, WeekRequest request) {
    List<LocalDate> days = new ArrayList<>();
    LocalDate day = request.start().toLocalDate();
    for (; !day.isAfter(request.lastDay()); day = day.plusDays(1)) {
      days.add(day);
    }
    return choice(key, days, new Moments(words)::day);
  }

  private Choice<KilnWork> kiln(WeekRequest request) {
    return choice(
        "week.kiln", request.kilns(), kiln -> FiringWords.kiln(request.studio(), kiln.kilnId()));
  }

  private Node extra(WeekRequest request) {
    Choice<KilnWork> kiln = kiln(request);
    Choice<Program> program = choice("week.program", kiln.chosen().programs(), Program::id);
    kiln.onChange(chosen -> program.offer(chosen.programs()));
    Choice<LocalDate> day = day("week.onDay", request);
    return form(
        "week.extraFiring",
        List.of(kiln, program, day),
        () ->
            model
                .whatIf()
                .extraFiring(kiln.chosen().kilnId(), program.chosen().id(), day.chosen()));
  }

  private Node broken(WeekRequest request) {
    Choice<KilnWork> kiln = kiln(request);
    Choice<LocalDate> first = day("week.fromDay", request);
    Choice<LocalDate> last = day("week.toDay", request);
    return form(
        "week.kilnOutOfOrder",
        List.of(kiln, first, last),
        () -> model.whatIf().outOfOrder(kiln.chosen().kilnId(), first.chosen(), last.chosen()));
  }

  private Node order(WeekRequest request) {
    TextField quantity = new TextField("12");
    quantity.setPrefColumnCount(5);
    Choice<Form> form = choice("week.form", request.studio().forms(), Form::name);
    List<Optional<Glaze>> glazes = new ArrayList<>();
    request.studio().glazes().forEach(glaze -> glazes.add(Optional.of(glaze)));
    glazes.add(Optional.empty());
    Choice<Optional<Glaze>> glaze =
        choice("week.glaze", glazes, one -> one.map(Glaze::name).orElse(words.of("week.noGlaze")));
    Choice<Stage> stage = choice("week.stage", STAGES, one -> words.of("choice", one));
    Choice<LocalDate> due = day("week.due", request);
    return form(
        "week.newOrder",
        List.of(new Labelled(words.of("week.quantity"), quantity), form, glaze, stage, due),
        () ->
            model
                .whatIf()
                .order(
                    new NewOrder(
                        form.chosen().id(),
                        form.chosen().name(),
                        glaze.chosen().map(Glaze::id),
                        stage.chosen(),
                        quantity.getText(),
                        due.chosen())));
  }

  private Node form(String heading, List<? extends Node> fields, Runnable action) {
    Label title = Lines.of(words.of(heading), "strong");
    Button ask = new Button(words.of("week.try"));
    ask.setAccessibleText(words.of("week.tryText", words.of(heading)));
    ask.setOnAction(event -> action.run());
    FlowPane row = new FlowPane();
    row.getStyleClass().add("week-fields");
    row.getChildren().addAll(fields);
    row.getChildren().add(ask);
    VBox all = new VBox(title, row);
    all.getStyleClass().add("group");
    return all;
  }

  private void show(Optional<Trial> trial) {
    result.getChildren().clear();
    String told = model.whatIf().told().get();
    if (!told.isEmpty()) {
      result.getChildren().add(Lines.of(told));
    }
    trial.ifPresent(one -> result.getChildren().addAll(new ComparisonGrid(words, one), answers()));
  }

  private FlowPane answers() {
    Button take = new Button(words.of("week.takeOver"));
    take.getStyleClass().add("main-button");
    take.setOnAction(event -> model.whatIf().takeOver());
    Button drop = new Button(words.of("week.drop"));
    drop.setOnAction(event -> model.whatIf().drop());
    FlowPane row = new FlowPane(take, drop);
    row.getStyleClass().add("week-fields");
    return row;
  }
}
