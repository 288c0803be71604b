package shelfful.learning;

import shelfful.record.Grade;

/** What is counted against a piece. */
public enum Flaw {
  /** It is a second or lost. */
  SECOND_OR_LOST,
  /** It is lost. */
  LOST;

  /** What such a piece is called in a count, as in {@code 3 of 60 flawed}. */
  public String word() {
    return this == LOST ? "lost" : "flawed";
  }

  boolean isOn(Grade grade) {
    return this == LOST ? grade == Grade.LOST : grade.isFlawed();
  }
}
