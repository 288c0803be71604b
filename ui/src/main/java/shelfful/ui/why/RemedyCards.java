package shelfful.ui.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import shelfful.load.LoadRequest;
import shelfful.measure.LengthUnit;
import shelfful.remedy.Explanation;
import shelfful.remedy.Remedy;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What is shown of a waiting batch: its reason, and a card for each remedy with its button. */
public final class RemedyCards {
  private final Words words;
  private final WhyViewModel model;
  private final Supplier<LengthUnit> unit;

  /**
   * Makes cards for what the view model holds.
   *
   * @param unit lengths are written in
   */
  public RemedyCards(Words words, WhyViewModel model, Supplier<LengthUnit> unit) {
    this.words = words;
    this.model = model;
    this.unit = unit;
  }

  private RemedyWords named() {
    LoadRequest request = model.load().orElseThrow().load().request();
    return new RemedyWords(words, request, unit.get());
  }

  /** How many of what wait. */
  String what(WaitingRow row) {
    return words.of("waits.what", row.group().size(), named().what(row.group().batch().id()));
  }

  /** How far looking has come. */
  String state(WaitingRow row) {
    return switch (row.look()) {
      case NOT_YET -> words.of("look.not_yet");
      case GOES_ON -> words.of("look.goes_on");
      case STOPPED -> words.of("look.stopped", row.remedies().size());
      case DONE -> words.of("look.done", row.remedies().size());
    };
  }

  /** Everything told of a batch. */
  List<Node> of(WaitingRow row) {
    List<Node> all = new ArrayList<>();
    all.add(Lines.of(what(row), "heading"));
    VBox reason = group();
    reason
        .getChildren()
        .addAll(
            Lines.of(words.of("why.reason"), "strong"), Lines.of(row.group().reason().sentence()));
    all.add(reason);
    row.remedies().forEach(remedy -> all.add(card(row, remedy)));
    all.add(ending(row));
    return all;
  }

  private VBox card(WaitingRow row, Remedy remedy) {
    RemedyWords named = named();
    VBox card = group();
    card.getChildren().add(Lines.of(named.heading(remedy, row.group().size()), "strong"));
    card.getChildren().add(Lines.of(remedy.sentence()));
    int now = model.load().orElseThrow().load().placed();
    for (String cost : named.costs(remedy, now)) {
      card.getChildren().add(Lines.of(cost, remedy.kind().isRisk() ? "wrong" : "quiet"));
    }
    Button button = new Button(named.button(remedy));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setAccessibleText(named.button(remedy) + ": " + remedy.sentence());
    button.setOnAction(event -> model.take(remedy));
    card.getChildren().add(button);
    return card;
  }

  /** That nothing was found is said as plainly as what was, but only after everything was tried. */
  private Node ending(WaitingRow row) {
    VBox ending = group();
    if (row.hasNone()) {
      ending.getChildren().add(Lines.of(words.of("why.none"), "strong"));
    }
    boolean done = row.look() == WaitingRow.Look.DONE;
    String tried = row.explanation().filter(all -> done).map(Explanation::inVain).orElse("");
    String state = done ? "" : state(row);
    for (String line : List.of(tried, state)) {
      if (!line.isEmpty()) {
        ending.getChildren().add(Lines.of(line, "quiet"));
      }
    }
    ending.setVisible(!ending.getChildren().isEmpty());
    return ending;
  }

  private static VBox group() {
    VBox group = new VBox();
    group.getStyleClass().add("group");
    return group;
  }
}
