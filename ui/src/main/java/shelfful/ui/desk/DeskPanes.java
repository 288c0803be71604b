package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import shelfful.drawing.LayerList;
import shelfful.drawing.LoadLists;
import shelfful.ui.lists.PieceRow;
import shelfful.ui.lists.PieceTable;
import shelfful.ui.lists.ProblemList;
import shelfful.ui.lists.WaitingList;
import shelfful.ui.look.Look;
import shelfful.ui.look.Scrolled;

/**
 * Kiln, sheet and lists side by side. Where the window is low for its letters, the lists lie behind
 * each other as tabs; where it is narrow for them, so does the kiln. Nothing but room decides.
 */
final class DeskPanes extends StackPane {
  /** From how many sizes of a letter of width on the kiln has a place of its own. */
  private static final double WIDE = 80;

  /** From how many sizes of a letter of height on the lists stand over each other. */
  private static final double HIGH = 57;

  private static final double LISTS_LEAST = 260;

  private final Parts parts;
  private final VBox column = new VBox();
  private final TabPane tabs = new TabPane();
  private final Tab in;
  private final Tab waits;
  private final Tab problems;
  private final Tab kiln;
  private Optional<Arrangement> arranged = Optional.empty();

  /**
   * What is arranged.
   *
   * @param kiln has letters of the usual size, too
   */
  record Parts(
      KilnPane kiln, SheetPane sheet, PieceTable in, WaitingList waits, ProblemList problems) {}

  /**
   * Arranges the parts by the room there is, now and whenever that changes.
   *
   * @param tabsText what is read aloud of the tabs
   */
  DeskPanes(Parts parts, String tabsText) {
    this.parts = parts;
    in = named(parts.in().heading());
    waits = named(parts.waits().heading());
    problems = named(parts.problems().heading());
    kiln = named(parts.kiln().heading());
    column.getStyleClass().add("side");
    VBox.setVgrow(parts.in(), Priority.ALWAYS);
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    tabs.setAccessibleText(tabsText);
    Look.dressTabs(tabs);
    parts.problems().managedProperty().addListener(changed -> arranged.ifPresent(this::offer));
    // What stands where may not change while styles are applied; laying out comes right after.
    parts.kiln().letters().fontProperty().addListener(changed -> requestLayout());
    arrange(new Arrangement(false, false));
  }

  /**
   * How much room there is for the letters.
   *
   * @param narrow whether the kiln has no place of its own
   * @param tabbed whether the lists lie behind each other
   */
  private record Arrangement(boolean narrow, boolean tabbed) {}

  @Override
  protected void layoutChildren() {
    double letter = parts.kiln().letters().getFont().getSize();
    // The window's own size, so that nothing moves when a message comes and goes.
    boolean narrow = getScene().getWidth() < WIDE * letter;
    Arrangement now = new Arrangement(narrow, narrow || getScene().getHeight() < HIGH * letter);
    if (getWidth() > 0 && !arranged.equals(Optional.of(now))) {
      arrange(now);
    }
    super.layoutChildren();
  }

  /** Lays out rows that say nothing, so that the first real ones come at once. */
  void rehearse() {
    parts.in().rehearse();
    parts.waits().rehearse();
  }

  /** Fills the lists. */
  void fill(LayerList layer, List<PieceRow> rows, List<LoadLists.Waiting> waiting) {
    parts.in().show(layer, rows);
    parts.waits().show(waiting);
  }

  /** Paints all of it once, into a picture that is thrown away. */
  void paintUnseen() {
    getChildren().forEach(child -> child.snapshot(null, null));
  }

  private void arrange(Arrangement next) {
    arranged = Optional.of(next);
    boolean tabbed = next.tabbed();
    getChildren().clear();
    column.getChildren().clear();
    all().forEach(tab -> tab.setContent(null));
    for (Label heading :
        List.of(parts.in().heading(), parts.waits().heading(), parts.problems().heading())) {
      show(heading, !tabbed);
    }
    show(parts.kiln().heading(), !next.narrow());
    parts.sheet().keepSmall(next.narrow());
    parts.in().explainBelow(tabbed);
    parts.waits().keepHigh(!tabbed);
    parts.problems().keepHigh(!tabbed);
    if (tabbed) {
      in.setContent(Scrolled.of(parts.in()));
      waits.setContent(parts.waits());
      problems.setContent(parts.problems());
      offer(next);
    } else {
      column.getChildren().addAll(parts.problems(), parts.in(), parts.waits());
    }
    split(next, tabbed ? tabs : column);
  }

  /** A fresh one, because the old one would share the room out as it did before. */
  private void split(Arrangement next, Region lists) {
    SplitPane split = new SplitPane();
    if (next.narrow()) {
      kiln.setContent(parts.kiln());
      split.getItems().setAll(parts.sheet(), lists);
      split.setDividerPositions(0.42);
    } else {
      SplitPane.setResizableWithParent(parts.kiln(), false);
      split.getItems().setAll(parts.kiln(), parts.sheet(), lists);
      split.setDividerPositions(0.2, 0.63);
    }
    lists.setMinWidth(LISTS_LEAST);
    SplitPane.setResizableWithParent(lists, false);
    getChildren().setAll(split);
  }

  private List<Tab> all() {
    return List.of(in, waits, problems, kiln);
  }

  private static void show(Label heading, boolean shown) {
    heading.setVisible(shown);
    heading.setManaged(shown);
  }

  /** The tabs that there is something behind. */
  private void offer(Arrangement next) {
    if (!next.tabbed()) {
      return;
    }
    List<Tab> offered =
        all().stream()
            .filter(tab -> tab != problems || parts.problems().isManaged())
            .filter(tab -> tab != kiln || next.narrow())
            .toList();
    tabs.getTabs().removeIf(tab -> !offered.contains(tab));
    for (int i = 0; i < offered.size(); i++) {
      if (!tabs.getTabs().contains(offered.get(i))) {
        tabs.getTabs().add(i, offered.get(i));
      }
    }
  }

  private static Tab named(Label heading) {
    Tab tab = new Tab();
    tab.textProperty().bind(heading.textProperty());
    return tab;
  }
}
