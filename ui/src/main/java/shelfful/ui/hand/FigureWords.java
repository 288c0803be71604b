package shelfful.ui.hand;

import shelfful.edit.Tentative;
import shelfful.inspect.PlaceFigure;
import shelfful.measure.Length;
import shelfful.ui.words.Words;

/** The judge's figures of a piece in the hand, in words. */
record FigureWords(Words words, HandViewModel.Speech speech) {
  private String length(Length length) {
    return new FigureText(speech.unit()).of(length);
  }

  /** What the piece comes closest to breaking, or breaks, in a sentence. */
  String told(Tentative held) {
    return held.tightest()
        .map(
            figure ->
                words.of(
                    figure.holds() ? "hand.near" : "hand.forbidden",
                    what(figure),
                    length(figure.measured()),
                    length(figure.required()),
                    length(new Length(Math.abs(figure.spare().micrometres())))))
        .orElseGet(() -> words.of("hand.open"));
  }

  /** The figure alone: the distance where it is kept, and by how much it falls short where not. */
  String label(Tentative held) {
    return held.tightest()
        .map(
            figure ->
                figure.holds()
                    ? length(figure.measured())
                    : words.of("hand.short", length(figure.spare())))
        .orElse("");
  }

  private String what(PlaceFigure figure) {
    return words.of("hand.to." + figure.rule().id(), speech.nameOf(figure.other()));
  }
}
