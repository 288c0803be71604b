package shelfful.ui.desk;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import shelfful.ui.why.RoomWords;
import shelfful.ui.words.Words;

/** How near the load on the desk comes to the most that was proved possible, as it changes. */
final class Room {
  private Room() {}

  /** The line; empty text while the limit is not known. */
  static StringBinding of(Words words, DeskViewModel model) {
    return Bindings.createStringBinding(
        () ->
            model
                .shown()
                .get()
                .map(load -> load.judged())
                .map(
                    judged ->
                        new RoomWords(words)
                            .of(judged.load().placed(), model.most(), judged.faults().isEmpty()))
                .orElse(""),
        model.shown(),
        model.state());
  }
}
