package shelfful.inspect;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import shelfful.inspect.StandingPiece.MadePiece;
import shelfful.ware.Piece;

/** Sets go in whole or wait whole; orders do if it can be. */
final class TogetherCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Set<String> placed = new HashSet<>();
    setting
        .load()
        .layers()
        .forEach(layer -> layer.placements().forEach(placement -> placed.add(placement.pieceId())));
    grouped(setting, Piece::setKey)
        .forEach((key, ids) -> split(Rule.SET_SPLIT, "only go together", ids, placed, findings));
    Map<String, List<String>> orders = grouped(setting, piece -> piece.batch().order().orElse(""));
    orders.remove("");
    orders.forEach(
        (order, ids) ->
            split(Rule.ORDER_SPLIT, "are one order, " + order + ",", ids, placed, findings));
  }

  private static Map<String, List<String>> grouped(Setting setting, Function<Piece, String> keyOf) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (MadePiece made : setting.list().values()) {
      groups
          .computeIfAbsent(keyOf.apply(made.piece()), key -> new ArrayList<>())
          .add(made.piece().id());
    }
    return groups;
  }

  private static void split(
      Rule rule, String how, List<String> ids, Set<String> placed, Findings findings) {
    List<String> in = ids.stream().filter(placed::contains).toList();
    List<String> waiting = ids.stream().filter(id -> !placed.contains(id)).toList();
    if (!in.isEmpty() && !waiting.isEmpty()) {
      findings.add(
          rule,
          "",
          ids,
          String.format(
              Locale.ROOT,
              "%s and %s %s, but the second wait. Place all of them or let all wait.",
              Wording.names(in),
              Wording.names(waiting),
              how));
    }
  }
}
