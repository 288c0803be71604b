package shelfful.ui.firings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.load.LoadRequest;
import shelfful.record.UnpackedFiring;
import shelfful.ui.look.Em;
import shelfful.ui.look.FileBar;
import shelfful.ui.look.Labelled;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** How the chosen firing went: program, witness cones by their places, hours, meter. */
final class CoursePane extends ScrollPane {
  private static final double FIELD = 190;

  private final Words words;
  private final FiringBook book;
  private final VBox page = new VBox();
  private final Label faults = Lines.of("", "wrong");
  private final TextField program = new TextField();
  private final TextField up = new TextField();
  private final TextField down = new TextField();
  private final TextField meterStart = new TextField();
  private final TextField meterEnd = new TextField();
  private final Map<String, TextField> cones = new LinkedHashMap<>();
  private String shown = "";

  CoursePane(Words words, FiringBook book) {
    this.words = words;
    this.book = book;
    page.getStyleClass().add("page");
    faults.managedProperty().bind(faults.textProperty().isNotEmpty());
    setContent(page);
    setFitToWidth(true);
    setFocusTraversable(false);
    book.chosen().addListener((property, was, is) -> follow());
    book.plan().addListener((property, was, is) -> follow());
    follow();
  }

  /** Another firing brings its own fields; the same one leaves what is being typed. */
  private void follow() {
    String id = book.chosen().get().map(one -> one.record().id()).orElse("");
    String now = id + (book.plan().get().isPresent() ? "+" : "");
    if (!now.equals(shown)) {
      shown = now;
      faults.setText("");
      page.getChildren().clear();
      book.chosen().get().ifPresent(this::show);
    }
  }

  private void show(UnpackedFiring firing) {
    CourseText text = CourseText.of(firing.record().course(), places());
    program.setText(text.program());
    up.setText(text.up());
    down.setText(text.down());
    meterStart.setText(text.meterStart());
    meterEnd.setText(text.meterEnd());
    cones.clear();
    text.cones().forEach((place, cone) -> cones.put(place, new TextField(cone)));
    FlowPane witnesses = fields();
    cones.forEach(
        (place, field) ->
            witnesses.getChildren().add(labelled(words.of("course.cone", place), field)));
    FlowPane rest = fields();
    rest.getChildren()
        .addAll(
            labelled(words.of("course.up"), up),
            labelled(words.of("course.down"), down),
            labelled(words.of("course.meterStart"), meterStart),
            labelled(words.of("course.meterEnd"), meterEnd));
    VBox group = new VBox(new Labelled(words.of("course.program"), program), witnesses, rest);
    group.getStyleClass().add("group");
    page.getChildren()
        .setAll(
            group,
            faults,
            FileBar.button(words, "course.keep", this::keep),
            Lines.of(words.of("course.note"), "quiet"));
  }

  /** The cone packs of the kiln; where it has none, one place by a name of its own. */
  private List<String> places() {
    List<String> packs =
        book.plan().get().stream()
            .map(load -> load.load().request())
            .flatMap(CoursePane::kiln)
            .flatMap(kiln -> kiln.keepOuts().stream())
            .filter(one -> one.kind() == KeepOut.Kind.CONE_PACK)
            .map(KeepOut::name)
            .toList();
    return packs.isEmpty() ? List.of(words.of("course.onePlace")) : packs;
  }

  private static Stream<Kiln> kiln(LoadRequest request) {
    return request.studio().kiln(request.firing().kilnId()).stream();
  }

  private static FlowPane fields() {
    FlowPane fields = new FlowPane();
    fields.getStyleClass().add("fields");
    return fields;
  }

  private Labelled labelled(String told, TextField field) {
    Labelled labelled = new Labelled(told, field);
    labelled.prefWidthProperty().bind(Em.of(faults, FIELD));
    return labelled;
  }

  private void keep() {
    Map<String, String> typed = new LinkedHashMap<>();
    cones.forEach((place, field) -> typed.put(place, field.getText()));
    CourseText.Reading reading =
        new CourseText(
                program.getText(),
                typed,
                up.getText(),
                down.getText(),
                meterStart.getText(),
                meterEnd.getText())
            .read(words);
    faults.setText(String.join("\n", reading.faults()));
    reading.course().ifPresent(book::note);
  }
}
