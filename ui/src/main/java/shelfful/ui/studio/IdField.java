package shelfful.ui.studio;

import java.util.function.Function;
import java.util.regex.Pattern;
import shelfful.measure.TextReading;

/** The short name by which lists and rules refer to a thing. */
record IdField(FieldMaker make) {
  private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} ._-]{0,39}");

  Field of(Place<String> place) {
    return make.typed(
        "id",
        place,
        Function.identity(),
        text ->
            ID.matcher(text.strip()).matches()
                ? new TextReading.Understood<>(text.strip())
                : new TextReading.Refused<>(
                    make.words().of("field.notId", text.strip()),
                    make.words().of("field.writeId")));
  }
}
