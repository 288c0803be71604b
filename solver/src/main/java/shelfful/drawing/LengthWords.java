package shelfful.drawing;

import java.util.List;
import java.util.stream.Collectors;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;

/** Lengths in the reader's unit, with or without its name. */
record LengthWords(LengthUnit unit) {
  String full(Length length) {
    return LengthText.write(length, unit);
  }

  /** The figure alone, for tables that name the unit once. */
  String bare(Length length) {
    String text = full(length);
    return text.substring(0, text.lastIndexOf(' '));
  }

  /** Several lengths on top of each other: {@code 152.4 + 25.4}. */
  String stacked(List<Length> lengths) {
    return lengths.stream().map(this::bare).collect(Collectors.joining(" + "));
  }

  /** The unit in a sentence: {@code in} alone would read as a preposition. */
  String unitWord() {
    return unit == LengthUnit.INCHES ? "inches" : unitName();
  }

  String unitName() {
    String text = full(Length.ZERO);
    return text.substring(text.lastIndexOf(' ') + 1);
  }
}
