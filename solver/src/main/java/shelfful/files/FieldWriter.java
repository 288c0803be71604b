package shelfful.files;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;

/**
 * Writes the fields of one object of a JSON file, in the order they are given. What is empty is
 * left out.
 */
final class FieldWriter {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final ObjectNode object = NODES.objectNode();

  ObjectNode object() {
    return object;
  }

  FieldWriter text(String field, String value) {
    object.put(field, value);
    return this;
  }

  FieldWriter text(String field, Optional<String> value) {
    value.ifPresent(present -> object.put(field, present));
    return this;
  }

  FieldWriter whole(String field, long value) {
    object.put(field, value);
    return this;
  }

  /** A whole number of thousandths as a decimal. */
  FieldWriter thousandths(String field, long value) {
    object.put(field, FileNumber.of(new Length(value)));
    return this;
  }

  FieldWriter flag(String field, boolean value) {
    object.put(field, value);
    return this;
  }

  FieldWriter length(String field, Length value) {
    object.put(field, FileNumber.of(value));
    return this;
  }

  FieldWriter length(String field, Optional<Length> value) {
    value.ifPresent(present -> length(field, present));
    return this;
  }

  FieldWriter mass(String field, Mass value) {
    object.put(field, FileNumber.of(value));
    return this;
  }

  FieldWriter angle(String field, Angle value) {
    object.put(field, FileNumber.of(value));
    return this;
  }

  FieldWriter percent(String field, double value) {
    object.put(field, FileNumber.of(value));
    return this;
  }

  FieldWriter number(String field, double value) {
    object.put(field, FileNumber.of(value));
    return this;
  }

  FieldWriter number(String field, OptionalDouble value) {
    value.ifPresent(present -> object.put(field, FileNumber.of(present)));
    return this;
  }

  FieldWriter cone(String field, Optional<Cone> value) {
    return text(field, value.map(Cone::number));
  }

  FieldWriter word(String field, Enum<?> value) {
    return text(field, FileValue.word(value));
  }

  FieldWriter point(String field, Point value) {
    object.set(field, place(value));
    return this;
  }

  FieldWriter points(String field, List<Point> values) {
    ArrayNode list = object.putArray(field);
    values.forEach(value -> list.add(place(value)));
    return this;
  }

  FieldWriter texts(String field, Collection<String> values) {
    ArrayNode list = object.putArray(field);
    values.forEach(list::add);
    return this;
  }

  <T> FieldWriter object(String field, T value, BiConsumer<T, FieldWriter> format) {
    FieldWriter inner = new FieldWriter();
    format.accept(value, inner);
    object.set(field, inner.object);
    return this;
  }

  <T> FieldWriter objects(String field, List<T> values, BiConsumer<T, FieldWriter> format) {
    ArrayNode list = object.putArray(field);
    for (T value : values) {
      FieldWriter inner = new FieldWriter();
      format.accept(value, inner);
      list.add(inner.object);
    }
    return this;
  }

  private static ArrayNode place(Point value) {
    ArrayNode pair = NODES.arrayNode(2);
    pair.add(FileNumber.of(value.x()));
    pair.add(FileNumber.of(value.y()));
    return pair;
  }
}
