package shelfful.learning;

import shelfful.record.Grade;

/** What is counted against a piece. */
public enum Flaw {
  /** It is a second or lost. */
  SECOND_OR_LOST,
  /** It is lost. */
  LOST;

  boolean isOn(Grade grade) {
    return this == LOST ? grade == Grade.LOST : grade.isFlawed();
  }
}
