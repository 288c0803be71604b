package shelfful.ui.figures;

import java.util.List;
import java.util.function.DoubleFunction;
import javafx.scene.chart.CategoryAxis;
import javafx.scene.chart.Chart;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.NumberAxis;
import javafx.scene.chart.StackedBarChart;
import javafx.scene.chart.XYChart;
import javafx.util.StringConverter;
import shelfful.figures.CauseCount;
import shelfful.ui.look.Decimals;
import shelfful.ui.words.Words;

/**
 * The drawings of figures. Series differ in the shape of their signs and in dashes or strokes, and
 * are named in the legend; the tables beside them say the same in words.
 */
record FigureCharts(Words words, Decimals decimals) {
  /** More causes would not be readable; the table has them all. */
  static final int MOST_CAUSES = 12;

  private static final double SHARE_MOST = 110;

  Chart of(Page page, FiguresViewModel model) {
    Chart chart =
        switch (page) {
          case PIECES -> pieces(model);
          case FILL -> fill(model);
          case COST -> cost(model);
          case CAUSES -> causes(model.figures().get().causes());
        };
    chart.setAnimated(false);
    chart.setAccessibleText(words.of("figures.chart", words.of("figuresPage", page)));
    return chart;
  }

  private LineChart<Number, Number> pieces(FiguresViewModel model) {
    LineChart<Number, Number> chart =
        lines(model.pieces(), words.of("figures.pieces"), count -> decimals.of(count, 0));
    chart.getData().add(series(words.of("figures.pieces"), model.pieces()));
    if (!model.limits().isEmpty()) {
      chart.getData().add(series(words.of("figures.limit"), model.limits()));
    }
    return chart;
  }

  private LineChart<Number, Number> fill(FiguresViewModel model) {
    LineChart<Number, Number> chart =
        lines(model.fill(), words.of("figures.percent"), share -> decimals.of(share, 0));
    NumberAxis up = (NumberAxis) chart.getYAxis();
    up.setAutoRanging(false);
    up.setLowerBound(0);
    up.setUpperBound(SHARE_MOST);
    up.setTickUnit(10);
    chart.getData().add(series(words.of("figures.percent"), model.fill()));
    return chart;
  }

  private LineChart<Number, Number> cost(FiguresViewModel model) {
    LineChart<Number, Number> chart =
        lines(model.costs(), words.of("figures.costPerPiece"), cost -> decimals.of(cost, 2));
    chart.getData().add(series(words.of("figures.costPerPiece"), model.costs()));
    return chart;
  }

  private LineChart<Number, Number> lines(
      List<FiguresViewModel.Point> points, String label, DoubleFunction<String> written) {
    NumberAxis up = new NumberAxis();
    up.setLabel(label);
    up.setTickLabelFormatter(
        new StringConverter<>() {
          @Override
          public String toString(Number value) {
            return written.apply(value.doubleValue());
          }

          @Override
          public Number fromString(String text) {
            throw new UnsupportedOperationException("an axis is not typed into");
          }
        });
    return new LineChart<>(DayAxis.of(words.of("figures.day"), points), up);
  }

  private static XYChart.Series<Number, Number> series(
      String name, List<FiguresViewModel.Point> points) {
    XYChart.Series<Number, Number> series = new XYChart.Series<>();
    series.setName(name);
    points.forEach(point -> series.getData().add(new XYChart.Data<>(point.day(), point.value())));
    return series;
  }

  /** The commonest at the top. */
  private StackedBarChart<Number, String> causes(List<CauseCount> all) {
    List<CauseCount> shown = all.subList(0, Math.min(MOST_CAUSES, all.size()));
    CategoryAxis causes = new CategoryAxis();
    NumberAxis counts = new NumberAxis();
    counts.setLabel(words.of("figures.flawedPieces"));
    counts.setMinorTickVisible(false);
    StackedBarChart<Number, String> chart = new StackedBarChart<>(counts, causes);
    XYChart.Series<Number, String> seconds = new XYChart.Series<>();
    seconds.setName(words.of("figures.seconds"));
    XYChart.Series<Number, String> lost = new XYChart.Series<>();
    lost.setName(words.of("figures.lost"));
    for (int i = shown.size() - 1; i >= 0; i--) {
      CauseCount one = shown.get(i);
      causes.getCategories().add(one.cause());
      seconds.getData().add(new XYChart.Data<>(one.seconds(), one.cause()));
      lost.getData().add(new XYChart.Data<>(one.lost(), one.cause()));
    }
    chart.getData().add(seconds);
    chart.getData().add(lost);
    return chart;
  }
}
