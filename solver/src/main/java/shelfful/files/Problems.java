package shelfful.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the problems of one file while it is read, so that all are told at once. */
final class Problems {
  /** More than this would not be read. */
  static final int MOST = 100;

  private final String file;
  private final List<Problem> kept = new ArrayList<>();
  private int count;
  private int warnings;

  Problems(String file) {
    this.file = Shown.text(file);
  }

  void add(String where, String field, String wrong, String mend) {
    count++;
    if (kept.size() < MOST) {
      kept.add(new Problem(file, where, field, wrong, mend));
    }
  }

  /** Notes something odd that does not stop the file from being used. */
  void warn(String where, String field, String wrong, String mend) {
    warnings++;
    add(where, field, wrong, mend);
  }

  /** How many problems that are not mere warnings. */
  int faults() {
    return count - warnings;
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>(kept);
    int more = count - kept.size();
    if (more > 0) {
      String wrong =
          more == 1 ? "There is 1 more problem." : "There are " + more + " more problems.";
      all.add(new Problem(file, "", "", wrong, "Mend the first ones and read the file again."));
    }
    return List.copyOf(all);
  }

  <T> ReadResult<T> refused() {
    return new ReadResult.Refused<>(all());
  }

  /** Usable if there is a value and no fault. */
  <T> ReadResult<T> result(Optional<T> value) {
    return value.isPresent() && faults() == 0
        ? new ReadResult.Read<>(value.get(), all())
        : new ReadResult.Refused<>(all());
  }
}
