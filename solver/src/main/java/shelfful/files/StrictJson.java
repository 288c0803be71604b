package shelfful.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;

/** JSON to a tree, by the letter of the standard and within limits; binds to no class. */
final class StrictJson {
  private static final int DEEPEST = 64;
  private static final int LONGEST_TEXT = 1 << 20;
  private static final int LONGEST_NUMBER = 64;
  private static final int LONGEST_NAME = 256;
  private static final long MOST_TOKENS = 2_000_000;

  private static final ObjectReader READER = reader();

  private StrictJson() {}

  /** The tree, or empty with the problem noted by line and column. */
  static Optional<JsonNode> read(byte[] bytes, Problems problems) {
    Optional<String> text = FileText.of(bytes, problems);
    if (text.isPresent() && text.get().isBlank()) {
      problems.add("", "", "The file is empty.", "Check that it was saved to its end.");
      return Optional.empty();
    }
    return text.flatMap(json -> read(json, problems));
  }

  private static Optional<JsonNode> read(String json, Problems problems) {
    try {
      return Optional.ofNullable(READER.readTree(json));
    } catch (JsonProcessingException e) {
      problems.add(where(e.getLocation()), "", wrong(e), mend(e));
      return Optional.empty();
    }
  }

  private static String where(JsonLocation at) {
    return at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  // The library's own sentences speak to programmers, so only their kind is used.
  private static String wrong(JsonProcessingException e) {
    String message = String.valueOf(e.getOriginalMessage());
    if (e instanceof StreamConstraintsException) {
      return "A value, a name or the nesting is longer than any file of this kind needs.";
    }
    if (e instanceof JsonEOFException) {
      return "The file ends in the middle.";
    }
    if (message.startsWith("Duplicate")) {
      return "The field " + between(message) + " stands there twice.";
    }
    if (message.startsWith("Trailing token")) {
      return "There is more after the end of the file's one object.";
    }
    return "This is not JSON.";
  }

  private static String mend(JsonProcessingException e) {
    if (e instanceof JsonEOFException) {
      return "Take it from a copy or the .bak file beside it.";
    }
    String message = String.valueOf(e.getOriginalMessage());
    if (message.startsWith("Duplicate")) {
      return "Remove one of the two.";
    }
    return e instanceof StreamConstraintsException
        ? "Check that it is the right file."
        : "Look there for a comma, bracket or quotation mark that is missing or too many.";
  }

  private static String between(String message) {
    int from = message.indexOf('\'');
    int to = message.lastIndexOf('\'');
    return from >= 0 && to > from ? Shown.quoted(message.substring(from + 1, to)) : "";
  }

  private static ObjectReader reader() {
    StreamReadConstraints limits =
        StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST)
            .maxDocumentLength(FileBytes.MOST)
            .maxStringLength(LONGEST_TEXT)
            .maxNumberLength(LONGEST_NUMBER)
            .maxNameLength(LONGEST_NAME)
            .maxTokenCount(MOST_TOKENS)
            .build();
    JsonFactory factory = JsonFactory.builder().streamReadConstraints(limits).build();
    return JsonMapper.builder(factory)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
        .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
        .build()
        .reader();
  }
}
