package shelfful.ui.calendar;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import shelfful.ui.calendar.CalendarLayout.Box;

/** Paints boxes, patterns and words that fit. */
final class Brush {
  private final GraphicsContext canvas;
  private final Tones tones;
  private final Font plain;
  private final Font strong;
  private final Text measure = new Text();

  Brush(GraphicsContext canvas, Tones tones) {
    this.canvas = canvas;
    this.tones = tones;
    plain = Font.font(tones.family(), tones.em());
    strong = Font.font(tones.family(), FontWeight.BOLD, tones.em());
    canvas.setTextBaseline(VPos.CENTER);
  }

  Color colour(Tone tone) {
    return tones.of(tone);
  }

  void fill(Box box, Tone tone) {
    canvas.setFill(colour(tone));
    canvas.fillRect(box.x(), box.y(), box.width(), box.height());
  }

  /** Along the inside of a box, so that bars that meet stay apart. */
  void outline(Box box, Tone tone, double width) {
    canvas.setStroke(colour(tone));
    canvas.setLineWidth(width);
    canvas.strokeRect(
        box.x() + width / 2,
        box.y() + width / 2,
        Math.max(0, box.width() - width),
        Math.max(0, box.height() - width));
  }

  void dashes(double... lengths) {
    canvas.setLineDashes(lengths);
  }

  void line(double x1, double y1, double x2, double y2, Tone tone) {
    canvas.setStroke(colour(tone));
    canvas.setLineWidth(1);
    canvas.strokeLine(snapped(x1), snapped(y1), snapped(x2), snapped(y2));
  }

  private static double snapped(double pixel) {
    return Math.floor(pixel) + 0.5;
  }

  /** Slanted strokes within a box. */
  void hatch(Box box, Tone tone, double pitch) {
    within(
        box,
        () -> {
          canvas.setStroke(colour(tone));
          canvas.setLineWidth(1);
          for (double x = box.x() - box.height(); x < box.right(); x += pitch) {
            canvas.strokeLine(x, box.bottom(), x + box.height(), box.y());
          }
        });
  }

  /** Rows of dots within a box. */
  void dots(Box box, Tone tone, double pitch) {
    within(
        box,
        () -> {
          canvas.setFill(colour(tone));
          int row = 0;
          for (double y = box.y() + pitch / 2; y < box.bottom(); y += pitch, row++) {
            for (double x = box.x() + (row % 2) * pitch / 2; x < box.right(); x += pitch) {
              canvas.fillOval(x - 0.8, y - 0.8, 1.6, 1.6);
            }
          }
        });
  }

  /** Does something that cannot paint outside of a box. */
  void within(Box box, Runnable painting) {
    canvas.save();
    canvas.beginPath();
    canvas.rect(box.x(), box.y(), box.width(), box.height());
    canvas.clip();
    painting.run();
    canvas.restore();
  }

  /** How the words of a box are written. */
  record Ink(Tone tone, boolean strong) {}

  /** The longest of the words that have room in a box, at its left; nothing where none have. */
  void words(List<String> variants, Box box, Ink ink) {
    fitting(variants, box.width(), ink.strong())
        .ifPresent(words -> write(words, box.x(), box.y() + box.height() / 2, ink));
  }

  /** The same in the middle of the box, on a ground of their own. */
  void wordsOn(List<String> variants, Box box, Tone ground) {
    Ink ink = new Ink(Tone.INK, false);
    double side = tones.em() * 0.3;
    fitting(variants, box.width() - 4 * side, false)
        .ifPresent(
            words -> {
              double wide = width(words, false);
              double x = box.x() + (box.width() - wide) / 2;
              double high = tones.em() * 1.2;
              double y = box.y() + (box.height() - high) / 2;
              fill(new Box(x - side, y, wide + 2 * side, high), ground);
              write(words, x, box.y() + box.height() / 2, ink);
            });
  }

  private void write(String words, double x, double middle, Ink ink) {
    canvas.setFont(ink.strong() ? strong : plain);
    canvas.setFill(colour(ink.tone()));
    canvas.fillText(words, x, middle);
  }

  /** Which of the words is the first that has room; the last where none has. */
  int fits(List<String> variants, double room) {
    return fitting(variants, room, false).map(variants::indexOf).orElse(variants.size() - 1);
  }

  private Optional<String> fitting(List<String> variants, double room, boolean bold) {
    return variants.stream()
        .filter(words -> !words.isEmpty() && width(words, bold) <= room)
        .findFirst();
  }

  private double width(String words, boolean bold) {
    measure.setFont(bold ? strong : plain);
    measure.setText(words);
    return measure.getLayoutBounds().getWidth();
  }
}
