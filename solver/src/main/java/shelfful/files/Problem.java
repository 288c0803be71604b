package shelfful.files;

/**
 * One thing wrong with a file, said so that a person can mend it.
 *
 * @param file the file's name, without its folder
 * @param where in a JSON file the path, such as {@code /forms/3/height}, or line and column where
 *     it is not even JSON; in a CSV file the line as an editor counts it and the cell as column,
 *     such as {@code line 14, column 5}; empty when it is about the whole file
 * @param field the field's name, or empty
 * @param wrong a sentence: what is wrong, with the value
 * @param mend a sentence: how to mend it
 */
public record Problem(String file, String where, String field, String wrong, String mend) {

  /** The whole problem on one line. */
  public String sentence() {
    StringBuilder line = new StringBuilder(file);
    if (!where.isEmpty()) {
      line.append(", ").append(where);
    }
    if (!field.isEmpty()) {
      line.append(", ").append(field);
    }
    line.append(": ").append(wrong);
    if (!mend.isEmpty()) {
      line.append(' ').append(mend);
    }
    return line.toString();
  }
}
