package shelfful.ui.look;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shelfful.drawing.PaperSize;
import shelfful.measure.LengthUnit;
import shelfful.ui.words.Language;

/**
 * The settings file: a line for each setting, {@code unit = inches}. A line that is missing or not
 * understood leaves the setting as it was, so that an old or damaged file still does its best.
 */
final class SettingsText {
  private SettingsText() {}

  static byte[] written(Settings settings) {
    StringBuilder text = new StringBuilder();
    line(text, "language", word(settings.language()));
    line(text, "unit", word(settings.unit()));
    line(text, "numbers", word(settings.numbers()));
    line(text, "paper", word(settings.paper()));
    line(text, "theme", word(settings.theme()));
    line(text, "scale", Integer.toString(settings.scale()));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  static Settings read(byte[] bytes, Settings before) {
    Map<String, String> lines = new HashMap<>();
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\\R")) {
      int at = line.indexOf('=');
      if (at > 0) {
        lines.put(line.substring(0, at).strip(), line.substring(at + 1).strip());
      }
    }
    return new Settings(
        constant(Language.class, lines.get("language")).orElse(before.language()),
        constant(LengthUnit.class, lines.get("unit")).orElse(before.unit()),
        constant(NumberStyle.class, lines.get("numbers")).orElse(before.numbers()),
        constant(PaperSize.class, lines.get("paper")).orElse(before.paper()),
        constant(Theme.class, lines.get("theme")).orElse(before.theme()),
        scale(lines.get("scale")).orElse(before.scale()));
  }

  private static Optional<Integer> scale(String word) {
    return Settings.SCALES.stream()
        .filter(scale -> Integer.toString(scale).equals(word))
        .findFirst();
  }

  private static <E extends Enum<E>> Optional<E> constant(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants()).filter(e -> word(e).equals(word)).findFirst();
  }
}
