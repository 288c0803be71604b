package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.ui.look.Lines;

/**
 * The groups of a page. While only values change the controls stay, and with them the focus and
 * what is half typed.
 */
final class PageView extends VBox {
  private final StudioViewModel model;
  private final List<FieldRow> rows = new ArrayList<>();
  private List<Group> shown = List.of();

  PageView(StudioViewModel model) {
    this.model = model;
    getStyleClass().add("page");
    model.page().addListener((property, was, is) -> show(is));
    show(model.page().get());
  }

  private void show(List<Group> page) {
    if (looksLikeShown(page)) {
      int row = 0;
      for (Group group : page) {
        for (Field field : group.fields()) {
          rows.get(row++).take(field, model.studio().get());
        }
      }
      // Steps act on the studio as it then is, so their buttons may stay.
    } else {
      rebuild(page);
    }
    shown = page;
  }

  private boolean looksLikeShown(List<Group> page) {
    if (page.size() != shown.size()) {
      return false;
    }
    for (int i = 0; i < page.size(); i++) {
      if (!page.get(i).looksLike(shown.get(i))) {
        return false;
      }
    }
    return true;
  }

  private void rebuild(List<Group> page) {
    String focused =
        rows.stream()
            .filter(row -> row.control().isFocused())
            .map(row -> row.field().path() + row.field().label())
            .findFirst()
            .orElse("");
    rows.clear();
    getChildren().setAll(page.stream().map(this::group).toList());
    rows.stream()
        .filter(row -> (row.field().path() + row.field().label()).equals(focused))
        .findFirst()
        .ifPresent(row -> row.control().requestFocus());
  }

  private VBox group(Group group) {
    Label title = Lines.of(group.title(), "heading");
    FlowPane fields = new FlowPane();
    fields.getStyleClass().add("fields");
    fields.setRowValignment(VPos.TOP);
    for (Field field : group.fields()) {
      FieldRow row = new FieldRow(model, field);
      fields.getChildren().add(row.cell());
      rows.add(row);
    }
    FlowPane steps = new FlowPane();
    steps.getStyleClass().add("buttons");
    for (Group.Step step : group.steps()) {
      Button button = new Button(step.label());
      button.setAccessibleText(step.label() + ", " + group.title());
      button.setOnAction(event -> model.take(step));
      steps.getChildren().add(button);
    }
    VBox box = new VBox(title);
    box.getStyleClass().add("group");
    if (!group.fields().isEmpty()) {
      box.getChildren().add(fields);
    }
    if (!group.steps().isEmpty()) {
      box.getChildren().add(steps);
    }
    return box;
  }

  /** The rows of the page, in their order. */
  List<FieldRow> rows() {
    return List.copyOf(rows);
  }
}
