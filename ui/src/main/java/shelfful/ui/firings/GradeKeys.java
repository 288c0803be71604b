package shelfful.ui.firings;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shelfful.record.Grade;
import shelfful.ui.words.Words;

/** One letter for each grade: on the drawing, in the list, and as the key that marks a piece. */
record GradeKeys(Words words) {

  Map<Grade, String> letters() {
    Map<Grade, String> letters = new EnumMap<>(Grade.class);
    for (Grade grade : Grade.values()) {
      letters.put(grade, letter(grade));
    }
    return letters;
  }

  /** The first letter of its word, whatever marks of length a language has in front. */
  String letter(Grade grade) {
    String word = words.of("gradeLetter", grade);
    return word.codePoints()
        .filter(Character::isLetter)
        .mapToObj(Character::toString)
        .findFirst()
        .orElse(word);
  }

  Optional<Grade> of(String typed) {
    for (Grade grade : Grade.values()) {
      if (letter(grade).equalsIgnoreCase(typed)) {
        return Optional.of(grade);
      }
    }
    return Optional.empty();
  }
}
