package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import shelfful.measure.TextReading;
import shelfful.ware.Batch;

/** Numbers of pieces as runs, such as {@code "1-12, 15"}. */
final class NumberRuns {
  private NumberRuns() {}

  static TextReading<List<Integer>> read(JsonNode node) {
    String text = node.isTextual() ? node.textValue().strip() : "";
    if (!text.matches("[0-9]{1,4}( ?- ?[0-9]{1,4})?( ?, ?[0-9]{1,4}( ?- ?[0-9]{1,4})?)*")) {
      return refused(node);
    }
    List<Integer> numbers = new ArrayList<>();
    for (String run : text.replace(" ", "").split(",")) {
      String[] ends = run.split("-");
      int from = Integer.parseInt(ends[0]);
      int to = Integer.parseInt(ends[ends.length - 1]);
      int last = numbers.isEmpty() ? 0 : numbers.get(numbers.size() - 1);
      if (from <= last || to < from || to > Batch.MOST_PIECES) {
        return refused(node);
      }
      for (int number = from; number <= to; number++) {
        numbers.add(number);
      }
    }
    return new TextReading.Understood<>(List.copyOf(numbers));
  }

  private static TextReading<List<Integer>> refused(JsonNode node) {
    return FileNumber.refused(
        node, "are no rising numbers from 1 to 1000.", "Write them as \"1-12, 15\".");
  }

  static String written(List<Integer> numbers) {
    StringBuilder runs = new StringBuilder();
    int from = 0;
    while (from < numbers.size()) {
      int to = from;
      while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
        to++;
      }
      runs.append(runs.isEmpty() ? "" : ", ").append(numbers.get(from));
      runs.append(to > from ? "-" + numbers.get(to) : "");
      from = to + 1;
    }
    return runs.toString();
  }
}
