package shelfful.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.ware.Glaze;

/**
 * The signs of the glazes of one load. Each hatching is used once as long as there are enough; the
 * letter tells the rest apart.
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
        signs.put(glaze.id(), sign(glaze, signs.size()));
      }
    }
  }

  private static GlazeSign sign(Glaze glaze, int order) {
    String letter = TextStyle.SMALL.wording().fit(glaze.letter(), WIDEST_LETTER);
    Hatch hatch = Hatch.values()[order % Hatch.values().length];
    return new GlazeSign(
        letter.isEmpty() ? "G" + (order + 1) : letter,
        glaze.name(),
        Optional.of(hatch),
        Ink.ofHex(glaze.colour()).tint());
  }

  GlazeSign of(SetPiece piece) {
    return piece
        .glaze()
        .map(glaze -> signs.getOrDefault(glaze.id(), sign(glaze, signs.size())))
        .orElse(GlazeSign.NOT_GLAZED);
  }
}
