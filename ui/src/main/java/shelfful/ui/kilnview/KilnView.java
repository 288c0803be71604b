package shelfful.ui.kilnview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.Region;
import shelfful.drawing.Box;
import shelfful.drawing.KilnSide;
import shelfful.drawing.LayerList;
import shelfful.ui.shelfview.CanvasSurface;
import shelfful.ui.words.Words;

/**
 * The kiln from the side, to scale. Over every layer lies a button that chooses it and reaches out
 * to its name beside the kiln.
 */
public final class KilnView extends Region {
  private static final double NAMES = 36;

  /** The size of letters that this room for names is made for. */
  private static final double LETTERS = 12;

  private static final double LEAST_BUTTON = 14;

  private final Words words;
  private final Consumer<String> choose;
  private final Canvas canvas = new Canvas();
  private final ToggleGroup group = new ToggleGroup();
  private final List<LayerButton> buttons = new ArrayList<>();
  private Optional<KilnSide> side = Optional.empty();
  private List<String> shown = List.of();

  /**
   * Shows nothing yet.
   *
   * @param choose is told the layer that was chosen by hand
   */
  public KilnView(Words words, Consumer<String> choose) {
    this.words = words;
    this.choose = choose;
    getStyleClass().add("kiln-view");
    setMinSize(160, 160);
    getChildren().add(canvas);
  }

  /** A button that stays chosen when it is pressed again. */
  private static final class LayerButton extends ToggleButton {
    private final KilnSide.Room room;

    LayerButton(KilnSide.Room room) {
      super(room.layerId());
      this.room = room;
      getStyleClass().setAll("layer-button");
    }

    @Override
    public void fire() {
      if (!isSelected()) {
        super.fire();
      }
    }
  }

  /** Shows another load. */
  public void show(KilnSide other, List<LayerList> layers) {
    List<String> words = layers.stream().map(this::told).toList();
    if (side.filter(other::equals).isPresent() && words.equals(shown)) {
      return;
    }
    shown = words;
    side = Optional.of(other);
    getChildren().removeAll(buttons);
    buttons.clear();
    for (KilnSide.Room room : other.downwards()) {
      buttons.add(button(room, layers));
    }
    getChildren().addAll(buttons);
    requestLayout();
  }

  private LayerButton button(KilnSide.Room room, List<LayerList> layers) {
    LayerButton button = new LayerButton(room);
    button.setToggleGroup(group);
    button.setAlignment(isAtRight(room) ? Pos.BOTTOM_RIGHT : Pos.BOTTOM_LEFT);
    layers.stream()
        .filter(layer -> layer.layerId().equals(room.layerId()))
        .map(this::told)
        .forEach(button::setAccessibleText);
    button
        .selectedProperty()
        .addListener(
            (property, was, is) -> {
              if (is) {
                choose.accept(room.layerId());
              }
            });
    return button;
  }

  private String told(LayerList layer) {
    return words.of(
        "kiln.layer", layer.layerId(), layer.shelf(), layer.rows().size(), layer.clearHeight());
  }

  /** Marks a layer as the chosen one. */
  public void mark(String layerId) {
    for (LayerButton button : buttons) {
      if (button.room.layerId().equals(layerId)) {
        button.setSelected(true);
      }
    }
  }

  private boolean isAtRight(KilnSide.Room room) {
    double middle = side.orElseThrow().picture().width() / 2;
    return (room.box().left() + room.box().right()) / 2 > middle + 1;
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(Math.floor(getWidth()));
    canvas.setHeight(Math.floor(getHeight()));
    GraphicsContext brush = canvas.getGraphicsContext2D();
    brush.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    side.ifPresent(one -> layOut(one, brush));
  }

  /** The size of the letters that the layers' names are written in. */
  private double letters() {
    return buttons.stream().mapToDouble(one -> one.getFont().getSize()).max().orElse(LETTERS);
  }

  private void layOut(KilnSide kiln, GraphicsContext brush) {
    double width = kiln.picture().width();
    double height = kiln.picture().height();
    double names = NAMES * Math.max(1, letters() / LETTERS);
    double atRight = kiln.layers().stream().anyMatch(this::isAtRight) ? names : 0;
    double scale = Math.min((getWidth() - names - atRight) / width, getHeight() / height);
    if (scale <= 0) {
      return;
    }
    double left = names + (getWidth() - names - atRight - width * scale) / 2;
    double top = 0;
    brush.save();
    brush.translate(left, top);
    brush.scale(scale, scale);
    CanvasSurface.paint(kiln.picture(), brush);
    brush.restore();
    for (LayerButton button : buttons) {
      Box box = button.room.box();
      boolean right = isAtRight(button.room);
      double from = right ? left + box.left() * scale : left - names;
      double to = right ? left + width * scale + names : left + box.right() * scale;
      double high = Math.max(LEAST_BUTTON, box.height() * scale);
      button.resizeRelocate(from, top + box.bottom() * scale - high, to - from, high);
    }
  }
}
