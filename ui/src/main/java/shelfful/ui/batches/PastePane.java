package shelfful.ui.batches;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import shelfful.app.BatchLines;
import shelfful.app.PastedTable;
import shelfful.ui.look.ByWords;
import shelfful.ui.look.Em;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** What a pasted table is taken for, its first rows, and everything wrong, before it is taken. */
final class PastePane extends VBox {
  private static final int ROWS = 8;
  private static final int LONGEST = 40;
  private static final double LEAST_ROWS = 130;
  private static final double LEAST_PROBLEMS = 60;
  private static final Map<Character, String> DELIMITERS =
      Map.of('\t', "paste.tab", ';', "paste.semicolon", ',', "paste.commaSign");

  private final Words words;
  private final PasteViewModel model;
  private final GridPane preview = new GridPane();
  private final ListView<String> problems = new ListView<>();
  private final Label guessed = Lines.of("", "quiet");
  private final Label counts = Lines.of("");
  private final CheckBox headed = new CheckBox();
  private final ComboBox<Character> delimiter = new ComboBox<>();
  private final Button confirm = new Button();
  private final Button saveWrong = new Button();
  private boolean filling;

  /**
   * What the pane asks for.
   *
   * @param done when it is over, whether taken or not
   * @param saveWrong takes the rows that are wrong, as a table
   */
  record Wishes(Runnable done, Consumer<byte[]> saveWrong) {}

  PastePane(PasteViewModel model, Wishes wishes) {
    this.model = model;
    this.words = model.words();
    getStyleClass().addAll("page", "paste-pane");
    Label heading = Lines.of(words.of("paste.heading"), "heading");
    preview.getStyleClass().add("preview");
    ScrollPane rows = new ScrollPane(preview);
    rows.setFocusTraversable(false);
    rows.minHeightProperty().bind(Em.of(counts, LEAST_ROWS));
    problems.setAccessibleText(words.of("paste.problems"));
    problems.setPlaceholder(new Label(words.of("paste.noProblems")));
    problems.setCellFactory(view -> new SentenceCell());
    problems.minHeightProperty().bind(Em.of(counts, LEAST_PROBLEMS));
    VBox.setVgrow(problems, Priority.ALWAYS);
    getChildren().addAll(heading, signs(), guessed, rows, counts, problems, buttons(wishes));
    model.table().addListener((property, was, is) -> show(is));
    show(model.table().get());
  }

  private FlowPane signs() {
    delimiter.getItems().setAll('\t', ';', ',');
    delimiter.setConverter(new ByWords<>(sign -> words.of(DELIMITERS.get(sign))));
    delimiter.valueProperty().addListener((property, was, is) -> ifByHand(() -> model.split(is)));
    Label label = new Label(words.of("paste.between"));
    label.setLabelFor(delimiter);
    delimiter.setAccessibleText(label.getText());
    headed.setText(words.of("paste.headed"));
    headed.selectedProperty().addListener((property, was, is) -> ifByHand(() -> model.head(is)));
    FlowPane signs = new FlowPane(label, delimiter, headed);
    signs.getStyleClass().add("buttons");
    signs.setHgap(10);
    signs.setVgap(6);
    return signs;
  }

  private void ifByHand(Runnable step) {
    if (!filling) {
      step.run();
    }
  }

  private FlowPane buttons(Wishes wishes) {
    confirm.getStyleClass().add("main-button");
    confirm.setOnAction(
        event -> {
          model.confirm();
          wishes.done().run();
        });
    saveWrong.setText(words.of("paste.saveWrong"));
    saveWrong.setOnAction(event -> wishes.saveWrong().accept(model.wrongRows()));
    Button cancel = new Button(words.of("paste.cancel"));
    cancel.setOnAction(event -> wishes.done().run());
    FlowPane buttons = new FlowPane(confirm, saveWrong, cancel);
    buttons.getStyleClass().add("buttons");
    buttons.setHgap(8);
    buttons.setVgap(6);
    return buttons;
  }

  private void show(PastedTable table) {
    filling = true;
    delimiter.setValue(table.delimiter());
    headed.setSelected(table.headed());
    guessed.setText(words.of("paste.guessed", model.decimalSign()));
    preview.getChildren().clear();
    for (int column = 0; column < table.mapping().size(); column++) {
      preview.add(mapping(table, column), column + 1, 0);
    }
    firstRows(table);
    counts.setText(words.of("paste.counts", model.good(), model.wrong()));
    confirm.setText(words.of("paste.confirm", model.good()));
    confirm.setDisable(model.good() == 0);
    saveWrong.setDisable(model.wrong() == 0);
    problems.getItems().setAll(model.problems());
    filling = false;
  }

  private ComboBox<String> mapping(PastedTable table, int column) {
    ComboBox<String> box = new ComboBox<>();
    box.getItems().add("");
    box.getItems().addAll(BatchLines.headings());
    box.setConverter(
        new ByWords<>(one -> one.isEmpty() ? words.of("paste.aside") : words.of("column." + one)));
    box.setValue(table.mapping().get(column));
    box.setAccessibleText(words.of("paste.column", column + 1));
    box.setMaxWidth(Double.MAX_VALUE);
    box.valueProperty().addListener((property, was, is) -> ifByHand(() -> model.map(column, is)));
    return box;
  }

  private void firstRows(PastedTable table) {
    int at = 1;
    if (table.headed() && !table.rows().isEmpty()) {
      row(at++, "", table.rows().get(0).cells(), Optional.empty(), table)
          .forEach(one -> one.getStyleClass().add("strong"));
    }
    List<PastedTable.Row> body = table.body();
    for (int i = 0; i < Math.min(ROWS, body.size()); i++) {
      row(
          at++,
          Integer.toString(i + 1),
          body.get(i).cells(),
          Optional.of(model.lines().get(i)),
          table);
    }
  }

  private List<Label> row(
      int at,
      String number,
      List<String> cells,
      Optional<BatchLines.Line> line,
      PastedTable table) {
    Label first = new Label(number);
    first.getStyleClass().add("quiet");
    preview.add(first, 0, at);
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      String text = cells.get(i);
      Label cell = new Label(text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text);
      cell.setMaxWidth(Double.MAX_VALUE);
      cell.setMinWidth(USE_PREF_SIZE);
      String heading = table.mapping().get(i);
      if (line.flatMap(one -> one.fault(heading)).isPresent() && !heading.isEmpty()) {
        cell.getStyleClass().add("faulty");
        cell.setText("! " + cell.getText());
      }
      preview.add(cell, i + 1, at);
      labels.add(cell);
    }
    return labels;
  }
}
