package shelfful.cli;

/** What the exit code of the program means. */
final class ExitCodes {
  /** Done. Pieces that wait are reported, not an error. */
  static final int DONE = 0;

  /** A fault of the program. */
  static final int FAULT = 1;

  /** The command or something it read is wrong. What could be read was still planned. */
  static final int BAD_INPUT = 2;

  /** The plan breaks a rule. */
  static final int RULE_BROKEN = 3;

  /** Stopped by hand; the best plan so far was saved. */
  static final int STOPPED = 130;

  private ExitCodes() {}
}
