package shelfful.ui.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.chart.XYChart;
import org.junit.jupiter.api.Test;
import shelfful.ui.Screen;
import shelfful.ui.look.Decimals;
import shelfful.ui.look.NumberStyle;
import shelfful.ui.words.Words;

class FigureChartsTest {
  @Test
  void theAxisOfCostSaysThatItIsOfAPiece() {
    Words words = Words.english();
    FiguresViewModel model = new FiguresViewModel(words, new SimpleObjectProperty<>(List.of()));
    XYChart<?, ?> chart =
        Screen.on(
            () ->
                (XYChart<?, ?>)
                    new FigureCharts(words, new Decimals(NumberStyle.DOT)).of(Page.COST, model));
    assertThat(chart.getYAxis().getLabel()).isEqualTo(words.of("figures.costPerPiece"));
  }
}
