package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.load.Rest;
import shelfful.ware.BisqueSetting;
import shelfful.ware.FiringKind;
import shelfful.ware.Part;
import shelfful.ware.PileWay;

/** Pieces rest on and in each other only as their forms allow, and no more of them than that. */
final class PileCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Carriers carriers = Carriers.of(setting.pieces());
    for (StandingPiece piece : setting.pieces()) {
      Rest rest = piece.placement().rest();
      if (rest.isOnShelf()) {
        onShelf(carriers, piece, findings);
      } else {
        carriers.under(piece).ifPresent(under -> rests(setting, carriers, piece, under, findings));
      }
      if (carriers.on(piece).size() > 1) {
        add(findings, piece, "carries more than one piece on itself. Set the others elsewhere.");
      }
      carried(carriers, piece, findings);
      high(carriers, piece, findings);
    }
  }

  private static void onShelf(Carriers carriers, StandingPiece piece, Findings findings) {
    boolean pair =
        carriers.on(piece).stream().anyMatch(other -> way(other) == PileWay.FOOT_TO_FOOT);
    if (piece.placement().rest().upsideDown() && !pair) {
      add(findings, piece, "stands on its rim with nothing foot to foot on it. Turn it over.");
    }
  }

  private static void rests(
      Setting setting,
      Carriers carriers,
      StandingPiece piece,
      StandingPiece under,
      Findings findings) {
    why(setting, carriers, piece, under)
        .ifPresent(
            reason ->
                findings.add(
                    Rule.PILE_NOT_ALLOWED,
                    piece.layerId(),
                    List.of(piece.id(), under.id()),
                    String.format(
                        Locale.ROOT,
                        "%s is set %s %s, but %s. Set it elsewhere.",
                        piece.id(),
                        words(way(piece)),
                        under.id(),
                        reason)));
  }

  private static Optional<String> why(
      Setting setting, Carriers carriers, StandingPiece piece, StandingPiece under) {
    if (setting.firing().kind() != FiringKind.BISQUE) {
      return Optional.of("only bisque ware may touch");
    }
    if (piece.made().piece().part() != Part.POT || under.made().piece().part() != Part.POT) {
      return Optional.of("lids and pots with their lids on stand by themselves");
    }
    if (!allows(piece, under)) {
      return Optional.of(
          "form " + under.made().form().id() + " does not allow that of " + formOf(piece));
    }
    if (!liesRight(carriers, piece, under)) {
      return Optional.of("the two do not lie the way round that this needs");
    }
    return Optional.empty();
  }

  private static boolean allows(StandingPiece piece, StandingPiece under) {
    BisqueSetting setting = under.made().form().bisque();
    boolean same = formOf(piece).equals(formOf(under));
    return switch (way(piece)) {
      case NESTED -> same && setting.piled().isPresent();
      case RIM_TO_RIM -> same && setting.rimToRim();
      case FOOT_TO_FOOT -> same && setting.footToFoot();
      case INSIDE ->
          setting.hollow().filter(hollow -> hollow.formIds().contains(formOf(piece))).isPresent();
    };
  }

  /**
   * Pairs are of two pieces and no more; what stands in a hollow may only hold what stands in it.
   */
  private static boolean liesRight(Carriers carriers, StandingPiece piece, StandingPiece under) {
    boolean over = piece.placement().rest().upsideDown();
    boolean underOver = under.placement().rest().upsideDown();
    boolean lowest = under.isOnShelf();
    boolean onUpright = !over && !underOver;
    boolean topOfPair = !lowest && isPair(way(under));
    return switch (way(piece)) {
      case NESTED -> onUpright && !topOfPair && (lowest || way(under) != PileWay.INSIDE);
      case INSIDE -> onUpright && !topOfPair;
      case RIM_TO_RIM -> over && !underOver && lowest && carriers.on(piece).isEmpty();
      case FOOT_TO_FOOT -> !over && underOver && lowest && carriers.on(piece).isEmpty();
    };
  }

  private static boolean isPair(PileWay way) {
    return way == PileWay.RIM_TO_RIM || way == PileWay.FOOT_TO_FOOT;
  }

  private static void carried(Carriers carriers, StandingPiece piece, Findings findings) {
    List<StandingPiece> on = carriers.allOn(piece);
    long grams = on.stream().mapToLong(one -> one.ware().mass().grams()).sum();
    piece
        .made()
        .form()
        .bisque()
        .carries()
        .filter(most -> grams > most.grams())
        .ifPresent(
            most ->
                findings.add(
                    Rule.PILE_TOO_HEAVY,
                    piece.layerId(),
                    List.of(piece.id()),
                    String.format(
                        Locale.ROOT,
                        "%s carries %d g in its pile, but its form may carry %d g. Take pieces off it.",
                        piece.id(),
                        grams,
                        most.grams())));
  }

  /** Counted at the topmost piece of a run of nested ones. */
  private static void high(Carriers carriers, StandingPiece piece, Findings findings) {
    boolean nested = !piece.isOnShelf() && way(piece) == PileWay.NESTED;
    boolean topmost = carriers.on(piece).stream().noneMatch(other -> way(other) == PileWay.NESTED);
    if (!nested || !topmost) {
      return;
    }
    int count = 1;
    StandingPiece at = piece;
    for (StandingPiece under : carriers.allUnder(piece)) {
      if (at.isOnShelf() || way(at) != PileWay.NESTED) {
        break;
      }
      count++;
      at = under;
    }
    int high = count;
    piece
        .made()
        .form()
        .bisque()
        .piled()
        .filter(piled -> high > piled.mostHigh())
        .ifPresent(
            piled ->
                findings.add(
                    Rule.PILE_TOO_HIGH,
                    piece.layerId(),
                    List.of(piece.id()),
                    String.format(
                        Locale.ROOT,
                        "The pile with %s on top is %d high, but its form is piled %d high at most. Take %d off.",
                        piece.id(),
                        high,
                        piled.mostHigh(),
                        high - piled.mostHigh())));
  }

  private static String formOf(StandingPiece piece) {
    return piece.made().form().id();
  }

  private static PileWay way(StandingPiece piece) {
    return piece.placement().rest().way().orElse(PileWay.NESTED);
  }

  private static String words(PileWay way) {
    return switch (way) {
      case NESTED -> "nested on";
      case RIM_TO_RIM -> "rim to rim on";
      case FOOT_TO_FOOT -> "foot to foot on";
      case INSIDE -> "inside";
    };
  }

  private static void add(Findings findings, StandingPiece piece, String what) {
    findings.add(
        Rule.PILE_NOT_ALLOWED, piece.layerId(), List.of(piece.id()), piece.id() + " " + what);
  }
}
