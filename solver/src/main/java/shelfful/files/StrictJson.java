package shelfful.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
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
import java.io.IOException;
import java.io.UncheckedIOException;
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
    try (JsonParser parser = READER.createParser(json)) {
      return tree(parser, json.length(), problems);
    } catch (IOException e) {
      // Closing a parser of a text in memory; nothing of the text is lost by it.
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<JsonNode> tree(JsonParser parser, int length, Problems problems)
      throws IOException {
    try {
      JsonNode tree = READER.readTree(parser);
      if (parser.nextToken() == null) {
        return Optional.of(tree);
      }
      problems.add(
          where(parser.currentLocation()),
          "",
          "There is more after the end of the file's one object.",
          "Remove it.");
    } catch (JsonProcessingException e) {
      Fault fault = fault(e, parser.currentLocation().getCharOffset() >= length);
      JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
      problems.add(where(at), "", fault.wrong(), fault.mend());
    } catch (NumberFormatException e) {
      // The library lets this one out raw, for an exponent beyond its own arithmetic.
      problems.add(
          where(parser.currentLocation()),
          "",
          "A number is far out of range.",
          "Check its exponent.");
    }
    return Optional.empty();
  }

  private static String where(JsonLocation at) {
    return "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  // The library's own sentences speak to programmers, so only their kind is used.
  private static Fault fault(JsonProcessingException e, boolean atTheEnd) {
    String message = String.valueOf(e.getOriginalMessage());
    if (e instanceof StreamConstraintsException) {
      return new Fault(
          "A value, a name or the nesting is longer than any file of this kind needs.",
          "Check that it is the right file.");
    }
    if (message.startsWith("Duplicate")) {
      return new Fault(
          "The field " + between(message) + " stands there twice.", "Remove one of the two.");
    }
    if (e instanceof JsonEOFException || atTheEnd) {
      return new Fault(
          "The file ends in the middle.", "Take it from a copy or the .bak file beside it.");
    }
    return new Fault(
        "This is not JSON.",
        "Look there for a comma, bracket or quotation mark that is missing or too many.");
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
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
        .build()
        .reader();
  }

  private record Fault(String wrong, String mend) {}
}
