package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.ware.PileWay;

/** How pieces are set on and in each other, in words and signs. */
final class PileWords {
  private PileWords() {}

  /** {@code 3 high, nested}, or what is inside; empty for a piece that stands by itself. */
  static String how(SetPiece piece) {
    List<String> told = new ArrayList<>();
    int nested = count(piece, PileWay.NESTED);
    if (nested > 0) {
      told.add((nested + 1) + " high, nested");
    }
    if (count(piece, PileWay.RIM_TO_RIM) > 0) {
      told.add("2 rim to rim");
    }
    if (count(piece, PileWay.FOOT_TO_FOOT) > 0) {
      told.add("2 foot to foot, the lower on its rim");
    }
    Set<String> inside = new LinkedHashSet<>();
    for (SetPiece upper : piece.above()) {
      if (way(upper).equals(Optional.of(PileWay.INSIDE))) {
        inside.add(upper.name() + (nested > 0 ? " inside the top one" : " inside"));
      }
    }
    told.addAll(inside);
    return String.join(", ", told);
  }

  /** Where a piece of a pile is when that is inside of another form; empty for all others. */
  static String within(SetPiece piece, SetPiece pile) {
    return way(piece).equals(Optional.of(PileWay.INSIDE)) ? "inside " + pile.name() : "";
  }

  /** {@code Bowl + Beaker}: the forms of a pile, each once, as short as a label has to be. */
  static String forms(SetPiece piece) {
    return piece.all().stream()
        .map(one -> one.form().name())
        .distinct()
        .collect(Collectors.joining(" + "));
  }

  /** The name with how it is set. */
  static String named(SetPiece piece) {
    String how = how(piece);
    return how.isEmpty() ? piece.name() : piece.name() + ": " + how;
  }

  /** {@code ×3} for three of one form, {@code +1} for one inside; empty for a lone piece. */
  static String sign(SetPiece piece) {
    int inside = count(piece, PileWay.INSIDE);
    int alike = piece.count() - inside;
    String times = alike > 1 ? "×" + alike : "";
    String more = inside > 0 ? "+" + inside : "";
    return times.isEmpty() || more.isEmpty() ? times + more : times + " " + more;
  }

  /** For each upper piece, which it is and where it goes, from below upwards. */
  static List<LayerList.Upper> upwards(SetPiece piece) {
    List<LayerList.Upper> told = new ArrayList<>();
    for (SetPiece upper : piece.above()) {
      String id = upper.piece().id();
      String how = words(way(upper).orElse(PileWay.NESTED));
      String on = upper.placement().rest().on().orElse("");
      told.add(new LayerList.Upper(id, id + " " + upper.name() + " " + how + " " + on));
    }
    return told;
  }

  private static String words(PileWay way) {
    return switch (way) {
      case NESTED -> "nested in";
      case RIM_TO_RIM -> "upside down, rim to rim on";
      case FOOT_TO_FOOT -> "foot to foot on";
      case INSIDE -> "inside";
    };
  }

  private static int count(SetPiece piece, PileWay way) {
    return (int) piece.above().stream().filter(one -> way(one).equals(Optional.of(way))).count();
  }

  private static Optional<PileWay> way(SetPiece piece) {
    return piece.placement().rest().way();
  }
}
