package shelfful.ui.studio;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import shelfful.measure.Cone;
import shelfful.measure.ConeText;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;
import shelfful.ui.words.Words;

/**
 * Makes fields of the usual kinds. A field is named by the words {@code field.LABEL}; the record
 * component it changes is the last step of its place.
 */
record FieldMaker(Manner manner) {
  Words words() {
    return manner.words();
  }

  String label(String key) {
    return words().of("field." + key);
  }

  /** A field that is typed, whatever its value. */
  <T> Field typed(
      String key,
      Place<T> place,
      Function<T, String> shown,
      Function<String, TextReading<T>> read) {
    return field(key, place, Field.Kind.TYPED, shown, read, List.of());
  }

  private <T> Field field(
      String key,
      Place<T> place,
      Field.Kind kind,
      Function<T, String> shown,
      Function<String, TextReading<T>> read,
      List<Field.Choice> choices) {
    return new Field(
        label(key),
        place.path(),
        kind,
        place.get().andThen(shown),
        (studio, text) -> read.apply(text).then(value -> put(place, studio, value)),
        choices);
  }

  /** The studio with a value in its place, or in words why the thing refuses the value. */
  <T> TextReading<Studio> put(Place<T> place, Studio studio, T value) {
    try {
      return new TextReading.Understood<>(place.set().apply(studio, value));
    } catch (IllegalArgumentException refused) {
      String key = "refused." + place.path().substring(place.path().lastIndexOf('/') + 1);
      return words().keys().contains(key)
          ? new TextReading.Refused<>(words().of(key), words().of(key + "Mend"))
          : new TextReading.Refused<>(String.valueOf(refused.getMessage()), "");
    }
  }

  Field name(String key, Place<String> place) {
    return typed(key, place, Function.identity(), manner::name);
  }

  Field length(String key, Place<Length> place, Bounds bounds) {
    return typed(key, place, manner::length, text -> manner.length(text, bounds));
  }

  Field optionalLength(String key, Place<Optional<Length>> place, Bounds bounds) {
    return typed(
        key,
        place,
        value -> value.map(manner::length).orElse(""),
        text -> manner.optional(text, one -> manner.length(one, bounds)));
  }

  Field mass(String key, Place<Mass> place) {
    return typed(key, place, manner::mass, manner::mass);
  }

  Field optionalMass(String key, Place<Optional<Mass>> place) {
    return typed(
        key,
        place,
        value -> value.map(manner::mass).orElse(""),
        text -> manner.optional(text, manner::mass));
  }

  Field count(String key, Place<Integer> place, int least, int most) {
    return typed(key, place, String::valueOf, text -> manner.count(text, least, most));
  }

  Field number(String key, Place<Double> place, double least, double most) {
    return typed(key, place, manner::number, text -> manner.number(text, least, most));
  }

  Field cone(String key, Place<Cone> place) {
    return typed(key, place, Cone::number, ConeText::read);
  }

  Field optionalCone(String key, Place<Optional<Cone>> place) {
    return typed(
        key,
        place,
        value -> value.map(Cone::number).orElse(""),
        text -> manner.optional(text, ConeText::read));
  }

  Field flag(String key, Place<Boolean> place) {
    return field(
        key,
        place,
        Field.Kind.TICKED,
        String::valueOf,
        text -> new TextReading.Understood<>(Boolean.valueOf(text)),
        List.of());
  }

  <E extends Enum<E>> Field choice(String key, Place<E> place, Class<E> type) {
    return field(
        key,
        place,
        Field.Kind.CHOSEN,
        Enum::name,
        text -> new TextReading.Understood<>(Enum.valueOf(type, text)),
        Arrays.stream(type.getEnumConstants()).map(this::choice).toList());
  }

  Field.Choice choice(Enum<?> one) {
    return new Field.Choice(one.name(), words().of("choice", one));
  }

  /** A choice among texts, with what each makes of the value. */
  <T> Field choice(
      String key,
      Place<T> place,
      List<Field.Choice> choices,
      Function<T, String> now,
      BiFunction<T, String, T> chosen) {
    return new Field(
        label(key),
        place.path(),
        Field.Kind.CHOSEN,
        place.get().andThen(now),
        (studio, text) -> {
          T before = place.get().apply(studio);
          return now.apply(before).equals(text)
              ? new TextReading.Understood<>(studio)
              : put(place, studio, chosen.apply(before, text));
        },
        choices);
  }

  Field colour(String key, Place<String> place) {
    return field(
        key,
        place,
        Field.Kind.COLOUR,
        Function.identity(),
        text ->
            text.strip().matches("#[0-9a-fA-F]{6}")
                ? new TextReading.Understood<>(text.strip())
                : new TextReading.Refused<>(
                    words().of("field.notColour", text.strip()), words().of("field.writeColour")),
        List.of());
  }

  /** Something that is shown and not changed here. */
  Field told(String key, String path, Function<Studio, String> shown) {
    return new Field(
        label(key),
        path,
        Field.Kind.TOLD,
        shown,
        (studio, text) -> new TextReading.Understood<>(studio),
        List.of());
  }

  Group.Step step(String key, UnaryOperator<Studio> change) {
    return new Group.Step(words().of("step." + key), change);
  }
}
