package shelfful.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.ware.Glaze;

/**
 * The signs of the glazes of one load. Each hatching is used once as long as there are enough; no
 * two glazes have the same letter.
 */
final class GlazePalette {
  private static final double WIDEST_LETTER = 6;

  private final Map<String, GlazeSign> signs = new HashMap<>();

  GlazePalette(Setting setting) {
    List<String> used =
        setting.placed().stream()
            .flatMap(piece -> piece.glaze().stream())
            .map(Glaze::id)
            .distinct()
            .toList();
    for (Glaze glaze : setting.studio().glazes()) {
      if (used.contains(glaze.id()) && !signs.containsKey(glaze.id())) {
        signs.put(glaze.id(), sign(glaze));
      }
    }
  }

  private GlazeSign sign(Glaze glaze) {
    Hatch hatch = Hatch.values()[signs.size() % Hatch.values().length];
    return new GlazeSign(
        letter(glaze), glaze.name(), Optional.of(hatch), Ink.ofHex(glaze.colour()).tint());
  }

  /** The potter's letter where no other glaze of the load has it, else one of our own. */
  private String letter(Glaze glaze) {
    List<String> taken = signs.values().stream().map(GlazeSign::letter).toList();
    String letter = TextStyle.SMALL.wording().fit(glaze.letter(), WIDEST_LETTER);
    for (int i = signs.size() + 1; letter.isEmpty() || taken.contains(letter); i++) {
      letter = "G" + i;
    }
    return letter;
  }

  /** A piece in somebody's hand may have a glaze that nothing in the load has. */
  GlazeSign of(SetPiece piece) {
    return piece.glaze().map(this::known).orElse(GlazeSign.NOT_GLAZED);
  }

  private GlazeSign known(Glaze glaze) {
    return Optional.ofNullable(signs.get(glaze.id())).orElseGet(() -> sign(glaze));
  }
}
