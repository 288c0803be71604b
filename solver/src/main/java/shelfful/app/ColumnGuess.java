package shelfful.app;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import shelfful.files.BatchSheet;
import shelfful.studio.Studio;

/**
 * What the columns of a pasted table are likely to be: by their names, or else by what they hold.
 */
final class ColumnGuess {
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,4}(?:[.,]0{1,2})?");
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private final Map<String, String> words;
  private final Studio studio;

  ColumnGuess(Map<String, String> words, Studio studio) {
    this.words = words;
    this.studio = studio;
  }

  private Optional<String> heading(String cell) {
    return BatchSheet.headingOf(cell)
        .or(() -> Optional.ofNullable(words.get(cell.strip().toLowerCase(Locale.ROOT))));
  }

  /** Whether a row names columns: two of them at least, or all that it has. */
  boolean isHeader(List<String> cells) {
    long known = cells.stream().filter(cell -> heading(cell).isPresent()).count();
    long filled = cells.stream().filter(cell -> !cell.isEmpty()).count();
    return known >= 2 || known == 1 && filled == 1;
  }

  List<String> byHeader(List<String> cells) {
    Set<String> taken = new HashSet<>();
    List<String> mapping = new ArrayList<>();
    for (String cell : cells) {
      mapping.add(heading(cell).filter(taken::add).orElse(""));
    }
    return mapping;
  }

  /** Takes a column for the first thing that most of its cells can be and no column is yet. */
  List<String> byContent(List<PastedTable.Row> rows, int width) {
    Map<String, Predicate<String>> kinds = new LinkedHashMap<>();
    Set<String> forms = new HashSet<>();
    studio.forms().forEach(form -> forms.addAll(List.of(key(form.id()), key(form.name()))));
    Set<String> glazes = new HashSet<>();
    studio.glazes().forEach(one -> glazes.addAll(List.of(key(one.id()), key(one.name()))));
    kinds.put("form", cell -> forms.contains(key(cell)));
    kinds.put("glaze", cell -> glazes.contains(key(cell)));
    kinds.put("due", cell -> DAY.matcher(cell).matches());
    kinds.put("quantity", cell -> WHOLE.matcher(cell).matches());
    List<String> mapping = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      int column = i;
      List<String> cells =
          rows.stream()
              .filter(row -> row.cells().size() > column)
              .map(row -> row.cells().get(column))
              .filter(cell -> !cell.isEmpty())
              .toList();
      Optional<String> kind =
          kinds.keySet().stream().filter(one -> isMostly(cells, kinds.get(one))).findFirst();
      kind.ifPresent(kinds::remove);
      mapping.add(kind.orElse(""));
    }
    return mapping;
  }

  private static boolean isMostly(List<String> cells, Predicate<String> kind) {
    return !cells.isEmpty() && cells.stream().filter(kind).count() * 2 > cells.size();
  }

  private static String key(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
