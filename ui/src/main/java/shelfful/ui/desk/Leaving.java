package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import shelfful.ui.words.Words;

/** Asks before work that no file holds is left behind: save it, do not save it, or go back. */
final class Leaving {
  private final Words words;
  private final Places places;
  private final Document plan;
  private final List<Document> all = new ArrayList<>();

  /**
   * Looks after one document to begin with.
   *
   * @param plan the one on the desk
   */
  Leaving(Words words, Places places, Document plan) {
    this.words = words;
    this.places = places;
    this.plan = plan;
    all.add(plan);
  }

  /**
   * Something that is kept in a file of its own.
   *
   * @param name in words
   * @param unsaved whether it has changes that no file holds
   * @param save saves it, asking for a file where it has none; whether it is saved then
   * @param drop forgets what is kept of it in case the program is killed
   */
  record Document(String name, BooleanSupplier unsaved, BooleanSupplier save, Runnable drop) {}

  /** Looks after another document, too. */
  void watch(Document other) {
    all.add(other);
  }

  /** Whether a document may be left behind, after asking if need be. */
  boolean mayLeave(Document one) {
    return mayLeave(List.of(one));
  }

  /** Whether everything may be left behind, as when the desk is closed. */
  boolean mayClose() {
    boolean may = mayLeave(all);
    if (may) {
      all.forEach(one -> one.drop().run());
    }
    return may;
  }

  /** Does something that puts another plan in place of the one on the desk, unless that stays. */
  void plan(Runnable next) {
    if (mayLeave(plan)) {
      next.run();
    }
  }

  /** Which plan to open; none when the one on the desk stays. */
  Optional<Path> toOpen() {
    return mayLeave(plan) ? places.toOpen() : Optional.empty();
  }

  private boolean mayLeave(List<Document> documents) {
    List<Document> unsaved =
        documents.stream().filter(one -> one.unsaved().getAsBoolean()).toList();
    if (unsaved.isEmpty()) {
      return true;
    }
    String names = unsaved.stream().map(Document::name).collect(Collectors.joining(", "));
    return switch (places.beforeLeaving(words.of("leave.ask", names))) {
      case SAVE -> unsaved.stream().allMatch(one -> one.save().getAsBoolean());
      case LEAVE -> true;
      case STAY -> false;
    };
  }
}
