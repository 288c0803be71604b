package shelfful.files;

import shelfful.measure.TextReading;

/**
 * A short text that a potter notes: the program of a firing, a place of witness cones, what is
 * wrong with a piece. Whoever takes such a text from a person asks here, so that what is taken is
 * what the readers of our files take.
 */
public final class ShortText {
  /** In characters, as people count them. */
  public static final int LONGEST = FileName.LONGEST_NAME;

  private ShortText() {}

  /**
   * The text as it is kept, without the spaces round it and with composed letters; refused when it
   * is empty, too long, or holds line breaks, control characters or marks that turn text round.
   */
  public static TextReading<String> read(String raw) {
    return FileName.name(raw);
  }

  /** Whether a text may be kept. */
  public static boolean isSound(String raw) {
    return read(raw).value().isPresent();
  }
}
