package shelfful.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.measure.TextReading;

/**
 * Reads the fields of one object of a JSON file and notes every problem by its path. A field that
 * is missing or wrong is noted and answered with a stand-in, so that reading goes on to find the
 * next problem; {@link #make} makes the domain object only when nothing in it was wrong.
 */
final class FieldReader {
  /** Stands in for an id that was missing or wrong; no good id looks like it. */
  static final String NO_ID = "?";

  private final ObjectNode object;
  private final String path;
  private final Problems problems;
  private final MadeAt madeAt;
  private final int faultsBefore;
  private final Set<String> asked = new LinkedHashSet<>();

  private FieldReader(ObjectNode object, String path, Problems problems, MadeAt madeAt) {
    this.object = object;
    this.path = path;
    this.problems = problems;
    this.madeAt = madeAt;
    this.faultsBefore = problems.faults();
  }

  /** A reader of the file's one object, or empty with the problem noted. */
  static Optional<FieldReader> ofDocument(byte[] bytes, Problems problems) {
    Optional<JsonNode> tree = StrictJson.read(bytes, problems);
    if (tree.isPresent() && tree.get() instanceof ObjectNode object) {
      return Optional.of(new FieldReader(object, "", problems, new MadeAt()));
    }
    if (tree.isPresent()) {
      problems.add(
          "", "", "The file does not hold one object.", "It must begin with { and end with }.");
    }
    return Optional.empty();
  }

  String path() {
    return path;
  }

  MadeAt madeAt() {
    return madeAt;
  }

  Problems problems() {
    return problems;
  }

  /** Whether nothing within this object was wrong so far. */
  boolean isStillGood() {
    return problems.faults() == faultsBefore;
  }

  boolean has(String field) {
    asked.add(field);
    JsonNode node = object.get(field);
    return node != null;
  }

  /** Whether a field holds just this text. */
  boolean isText(String field, String text) {
    JsonNode node = object.get(field);
    return node != null && node.isTextual() && node.textValue().equals(text);
  }

  void fault(String field, String wrong, String mend) {
    problems.add(field.isEmpty() ? path : path + "/" + field, field, wrong, mend);
  }

  /** A value that may be left out. */
  <T> Optional<T> optional(String field, Function<JsonNode, TextReading<T>> meaning) {
    if (!has(field)) {
      return Optional.empty();
    }
    return understood(path + "/" + field, field, meaning.apply(object.get(field)));
  }

  /** A value that must be there; the stand-in when it is not or is wrong. */
  <T> T required(String field, Function<JsonNode, TextReading<T>> meaning, T standIn) {
    if (!has(field)) {
      missing(field);
    }
    return optional(field, meaning).orElse(standIn);
  }

  String id(String field) {
    return required(field, node -> text(node).then(FileName::id), NO_ID);
  }

  Optional<String> optionalId(String field) {
    return optional(field, node -> text(node).then(FileName::id));
  }

  String name(String field) {
    return required(field, node -> text(node).then(FileName::name), "?");
  }

  Length length(String field, LengthRange range) {
    return required(field, node -> FileValue.length(node, range), range.most());
  }

  Length length(String field, LengthRange range, Length whenAbsent) {
    return optional(field, node -> FileValue.length(node, range)).orElse(whenAbsent);
  }

  Mass mass(String field) {
    return required(field, FileValue::mass, Mass.ZERO);
  }

  Optional<Cone> optionalCone(String field) {
    return optional(field, FileValue::cone);
  }

  int whole(String field, int least, int most) {
    return required(field, node -> FileValue.whole(node, least, most), least);
  }

  int whole(String field, int least, int most, int whenAbsent) {
    return optional(field, node -> FileValue.whole(node, least, most)).orElse(whenAbsent);
  }

  /** A whole number of any size, at least as large as given. */
  long wholeLong(String field, long least) {
    return required(field, node -> FileValue.wholeAtLeast(node, least), least);
  }

  boolean flag(String field, boolean whenAbsent) {
    return optional(field, FileValue::flag).orElse(whenAbsent);
  }

  <E extends Enum<E>> E choice(String field, Class<E> kind) {
    return required(
        field,
        node -> text(node).then(word -> FileValue.choice(word, kind)),
        kind.getEnumConstants()[0]);
  }

  <E extends Enum<E>> Optional<E> optionalChoice(String field, Class<E> kind) {
    return optional(field, node -> text(node).then(word -> FileValue.choice(word, kind)));
  }

  /** An object within this one that must be there. */
  <T> Optional<T> object(String field, Function<FieldReader, Optional<T>> format) {
    if (!has(field)) {
      missing(field);
    }
    return optionalObject(field, format);
  }

  <T> Optional<T> optionalObject(String field, Function<FieldReader, Optional<T>> format) {
    return has(field)
        ? within(object.get(field), path + "/" + field, field, format)
        : Optional.empty();
  }

  /** The good ones of a list of objects that must be there; the others are noted. */
  <T> List<T> objects(String field, Function<FieldReader, Optional<T>> format) {
    List<T> good = new ArrayList<>();
    forEach(field, (node, at) -> within(node, at, field, format).ifPresent(good::add));
    return good;
  }

  /** The same for a list that may be left out. */
  <T> List<T> optionalObjects(String field, Function<FieldReader, Optional<T>> format) {
    return has(field) ? objects(field, format) : List.of();
  }

  /** Every id that the objects of a list claim, whether or not they are good otherwise. */
  Set<String> claimedIds(String field) {
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode item : object.path(field)) {
      text(item.path("id")).then(FileName::id).value().ifPresent(ids::add);
    }
    return ids;
  }

  /** A list of single values that must be there. */
  <T> List<T> values(String field, Function<JsonNode, TextReading<T>> meaning) {
    List<T> good = new ArrayList<>();
    forEach(field, (node, at) -> understood(at, field, meaning.apply(node)).ifPresent(good::add));
    return good;
  }

  <T> List<T> optionalValues(String field, Function<JsonNode, TextReading<T>> meaning) {
    return has(field) ? values(field, meaning) : List.of();
  }

  List<String> ids(String field) {
    return values(field, node -> text(node).then(FileName::id));
  }

  Point point(String field) {
    return required(field, PointFormat::read, Point.ORIGIN);
  }

  private void forEach(String field, ItemReader reader) {
    if (!has(field)) {
      missing(field);
      return;
    }
    JsonNode list = object.get(field);
    if (!list.isArray()) {
      fault(
          field, FileNumber.shown(list) + " stands where a list belongs.", "Put [ and ] round it.");
      return;
    }
    for (int i = 0; i < list.size(); i++) {
      reader.read(list.get(i), path + "/" + field + "/" + i);
    }
  }

  private <T> Optional<T> within(
      JsonNode node, String at, String field, Function<FieldReader, Optional<T>> format) {
    if (node instanceof ObjectNode inner) {
      return format.apply(new FieldReader(inner, at, problems, madeAt));
    }
    problems.add(
        at,
        field,
        FileNumber.shown(node) + " stands where an object belongs.",
        "Write its fields between { and }.");
    return Optional.empty();
  }

  private <T> Optional<T> understood(String at, String field, TextReading<T> reading) {
    if (reading instanceof TextReading.Refused<T> refused) {
      problems.add(at, field, refused.wrong(), refused.mend());
    }
    return reading.value();
  }

  private void missing(String field) {
    fault(field, "The field is missing.", "Add it.");
  }

  static TextReading<String> text(JsonNode node) {
    return node.isTextual()
        ? new TextReading.Understood<>(node.textValue())
        : FileNumber.refused(node, "is not a text.", "Put it in quotation marks.");
  }

  /**
   * Ends the reading of this object: notes fields nobody asked for, and makes the object if nothing
   * was wrong. What the domain itself refuses becomes a problem with the domain's sentence.
   */
  <T> Optional<T> make(Supplier<T> maker) {
    noteUnknownFields();
    if (!isStillGood()) {
      return Optional.empty();
    }
    try {
      T made = maker.get();
      madeAt.put(made, path);
      return Optional.of(made);
    } catch (IllegalArgumentException e) {
      problems.add(path, "", e.getMessage() + ".", "Change one of these figures.");
      return Optional.empty();
    }
  }

  private void noteUnknownFields() {
    object
        .fieldNames()
        .forEachRemaining(
            name -> {
              if (!asked.contains(name)) {
                problems.add(
                    path + "/" + Shown.text(name),
                    Shown.text(name),
                    "No field of this name is known here.",
                    NearMiss.advice(name, asked));
              }
            });
  }

  private interface ItemReader {
    void read(JsonNode node, String at);
  }
}
