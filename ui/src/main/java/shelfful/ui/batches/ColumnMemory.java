package shelfful.ui.batches;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shelfful.app.KeepAFile;

/**
 * What the columns of tables were taken for, by their headings. In its file a line for each set of
 * headings: the headings, a tab, and what they were taken for, both parted by bars.
 */
public final class ColumnMemory {
  private static final String NAME = "columns.txt";
  private static final int MOST = 200;

  private final Optional<Path> file;
  private final Map<String, String> known = new TreeMap<>();

  private ColumnMemory(Optional<Path> file) {
    this.file = file;
    file.flatMap(KeepAFile::read)
        .ifPresent(
            bytes ->
                new String(bytes, StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split("\t", 2))
                    .filter(parts -> parts.length == 2)
                    .forEach(parts -> known.put(parts[0], parts[1])));
  }

  /** Remembers as long as the program runs. */
  public static ColumnMemory ofThisRun() {
    return new ColumnMemory(Optional.empty());
  }

  /** Remembers in a file of a folder. */
  public static ColumnMemory in(Path folder) {
    return new ColumnMemory(Optional.of(folder.resolve(NAME)));
  }

  Optional<List<String>> recall(List<String> header) {
    return Optional.ofNullable(known.get(key(header)))
        .map(mapping -> Arrays.asList(mapping.split("\\|", -1)));
  }

  void remember(List<String> header, List<String> mapping) {
    if (known.size() >= MOST && !known.containsKey(key(header))) {
      known.remove(known.keySet().iterator().next());
    }
    known.put(key(header), String.join("|", mapping));
    // A memory that cannot be saved costs a choice next time, nothing else.
    file.ifPresent(one -> KeepAFile.save(one, text().getBytes(StandardCharsets.UTF_8)));
  }

  private String text() {
    return known.entrySet().stream()
        .map(entry -> entry.getKey() + "\t" + entry.getValue() + "\n")
        .collect(Collectors.joining());
  }

  private static String key(List<String> header) {
    return header.stream()
        .map(cell -> cell.strip().toLowerCase(Locale.ROOT).replaceAll("[|\\s]+", " "))
        .collect(Collectors.joining("|"));
  }
}
