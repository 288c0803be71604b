package shelfful.ui.week;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import shelfful.app.WeekComparison;
import shelfful.app.WeekComparison.Fate;
import shelfful.app.WeekComparison.Figures;
import shelfful.cost.WeekCost;
import shelfful.ui.look.Lines;
import shelfful.ui.words.Words;

/** Two weeks side by side, with the batches that fare otherwise. */
final class ComparisonGrid extends GridPane {
  private final Words words;
  private final boolean estimated;
  private int row;

  ComparisonGrid(Words words, WhatIfViewModel.Trial trial) {
    this.words = words;
    estimated =
        WeekCost.of(trial.before().plan()).estimated()
            || WeekCost.of(trial.after().plan()).estimated();
    getStyleClass().add("week-comparison");
    ColumnConstraints wide = new ColumnConstraints();
    wide.setPercentWidth(40);
    ColumnConstraints narrow = new ColumnConstraints();
    narrow.setPercentWidth(30);
    getColumnConstraints().addAll(wide, narrow, narrow);
    WeekComparison comparison = trial.comparison();
    line(true, List.of(trial.name(), words.of("week.asItIs"), words.of("week.withIt")));
    figures(comparison.before(), comparison.after());
    comparison.batches().forEach(this::batch);
    if (comparison.batches().isEmpty()) {
      line(false, List.of(words.of("week.noBatchOtherwise"), "", ""));
    }
  }

  private void figures(Figures before, Figures after) {
    both("week.figureFirings", before.firings(), after.firings());
    both("week.figureLate", before.latePieces(), after.latePieces());
    both("week.figureLateDays", before.lateDays(), after.lateDays());
    both("week.figureWaiting", before.waiting(), after.waiting());
    line(
        false,
        List.of(
            words.of(estimated ? "week.figureEnergyEstimate" : "week.figureEnergy"),
            amount("week.number", before.kilowattHours()),
            amount("week.number", after.kilowattHours())));
    line(
        false,
        List.of(
            words.of(estimated ? "week.figureCostEstimate" : "week.figureCost"),
            amount("week.amount", before.money()),
            amount("week.amount", after.money())));
  }

  private void both(String key, long before, long after) {
    line(
        false,
        List.of(words.of(key), words.of("week.number", before), words.of("week.number", after)));
  }

  private String amount(String key, OptionalDouble figure) {
    return figure.isPresent() ? words.of(key, figure.getAsDouble()) : words.of("week.unknown");
  }

  private void batch(WeekComparison.Row batch) {
    line(
        false,
        List.of(
            words.of("week.batch", batch.batchId()), fate(batch.before()), fate(batch.after())));
  }

  private String fate(Fate fate) {
    List<String> parts = new ArrayList<>();
    if (fate.late() > 0) {
      parts.add(words.of("week.fateLate", fate.late(), fate.days()));
    }
    if (fate.waiting() > 0) {
      parts.add(words.of("week.fateWaiting", fate.waiting()));
    }
    return parts.isEmpty() ? words.of("week.fateInTime") : String.join(", ", parts);
  }

  private void line(boolean strong, List<String> texts) {
    for (int column = 0; column < texts.size(); column++) {
      Label label = strong ? Lines.of(texts.get(column), "strong") : Lines.of(texts.get(column));
      GridPane.setHalignment(label, HPos.LEFT);
      add(label, column, row);
    }
    row++;
  }
}
