package shelfful.ui.desk;

import java.util.List;

/**
 * Something the user must know or answer, until it is closed.
 *
 * @param heading in a line
 * @param sentences under it, may be none
 * @param choices what can be answered besides closing it, may be none
 */
record Notice(String heading, List<String> sentences, List<Choice> choices) {
  /** Takes its own copies. */
  Notice {
    sentences = List.copyOf(sentences);
    choices = List.copyOf(choices);
  }

  Notice(String heading, List<String> sentences) {
    this(heading, sentences, List.of());
  }

  /** An answer and what it does; the notice goes away with it. */
  record Choice(String words, Runnable action) {}
}
