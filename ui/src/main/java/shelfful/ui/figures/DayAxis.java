package shelfful.ui.figures;

import java.time.LocalDate;
import java.util.List;
import javafx.scene.chart.NumberAxis;
import javafx.util.StringConverter;

/** An axis of days, written by ISO 8601, a few of them named. */
final class DayAxis {
  private static final int NAMED = 5;

  private DayAxis() {}

  static NumberAxis of(String label, List<FiguresViewModel.Point> points) {
    long first = points.stream().mapToLong(FiguresViewModel.Point::day).min().orElse(0);
    long last = points.stream().mapToLong(FiguresViewModel.Point::day).max().orElse(first);
    long step = Math.max(1, (last - first + NAMED - 1) / NAMED);
    NumberAxis axis = new NumberAxis(label, first - step / 4.0, last + step / 4.0, step);
    axis.setLowerBound(first);
    axis.setUpperBound(Math.max(first + 1, last));
    axis.setMinorTickVisible(false);
    axis.setTickLabelFormatter(
        new StringConverter<>() {
          @Override
          public String toString(Number day) {
            return LocalDate.ofEpochDay(Math.round(day.doubleValue())).toString();
          }

          @Override
          public Number fromString(String text) {
            throw new UnsupportedOperationException("an axis is not typed into");
          }
        });
    return axis;
  }
}
