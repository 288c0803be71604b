package shelfful.files;

/**
 * A file could not be saved. The message is a sentence for people: what failed, what is safe, what
 * to do.
 */
public final class SaveFailed extends Exception {
  private static final long serialVersionUID = 1L;

  SaveFailed(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  /** For what the reader of such a file would refuse; it is refused before anything is written. */
  static SaveFailed unreadable(Problem problem) {
    return new SaveFailed(problem.sentence() + " Nothing was saved.", null);
  }

  /** What to tell the person. */
  public String sentence() {
    return getMessage();
  }
}
