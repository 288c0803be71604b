package shelfful.ui.calendar;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import shelfful.ui.calendar.CalendarLayout.Box;

/** One of the patterns of a calendar, to stand beside the words for it. */
public final class PatternKey extends Region {
  /** The patterns there are a key for. */
  public enum Pattern {
    HANDS_ON,
    HEATING,
    COOLING,
    OUT_OF_ORDER
  }

  private static final CalendarWords NO_WORDS =
      new CalendarWords(day -> List.of(), List.of(), List.of(), List.of(), List.of());

  private final Pattern pattern;
  private final Canvas canvas = new Canvas();
  private final Tones tones = new Tones(this::requestLayout);

  /** The key to one pattern. */
  public PatternKey(Pattern pattern) {
    this.pattern = pattern;
    getStyleClass().addAll("calendar-view", "pattern-key");
    getStylesheets().add(PatternKey.class.getResource("calendar.css").toExternalForm());
    getChildren().addAll(tones.labels());
    getChildren().add(canvas);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(Math.floor(getWidth()));
    canvas.setHeight(Math.floor(getHeight()));
    Box box = new Box(0, 0, canvas.getWidth(), canvas.getHeight());
    Brush brush = new Brush(canvas.getGraphicsContext2D(), tones);
    brush.fill(box, Tone.PAPER);
    PhasePainter painter = new PhasePainter(brush, NO_WORDS);
    switch (pattern) {
      case HANDS_ON -> painter.handsOn(box);
      case HEATING -> painter.heating(box);
      case COOLING -> painter.cooling(box);
      case OUT_OF_ORDER -> painter.outOfOrder(box);
    }
    brush.outline(box, Tone.EDGE, 1);
  }
}
