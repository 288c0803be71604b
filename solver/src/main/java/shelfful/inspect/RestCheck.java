package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.load.Rest;
import shelfful.measure.Length;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Hollow;
import shelfful.ware.Lug;
import shelfful.ware.PileWay;
import shelfful.ware.StandingWare;

/**
 * Every piece rests on what it is said to rest on: the shelf or a piece under it, straight over
 * that piece's middle, turned alike, at the height that the form says, and within the hollow that
 * it stands in.
 */
final class RestCheck implements Check {
  /** Sizes are whole micrometres; a lift may be one off by rounding. */
  private static final long ROUNDING = 1;

  @Override
  public void judge(Setting setting, Findings findings) {
    Carriers carriers = Carriers.of(setting.pieces());
    for (StandingPiece piece : setting.pieces()) {
      Rest rest = piece.placement().rest();
      if (rest.isPlain()) {
        continue;
      }
      Optional<StandingPiece> under = carriers.under(piece);
      if (!rest.isOnShelf() && (under.isEmpty() || isInRing(carriers, piece))) {
        floats(piece, "rests on " + rest.on().get() + ", which nothing carries there", findings);
        continue;
      }
      lift(setting, piece, under, findings);
      under.ifPresent(carrier -> straight(piece, carrier, findings));
      under
          .filter(carrier -> rest.way().filter(way -> way == PileWay.INSIDE).isPresent())
          .ifPresent(carrier -> within(setting, piece, carrier, findings));
    }
  }

  private static boolean isInRing(Carriers carriers, StandingPiece piece) {
    List<StandingPiece> under = carriers.allUnder(piece);
    return under.contains(piece) || !under.get(under.size() - 1).isOnShelf();
  }

  private static void lift(
      Setting setting, StandingPiece piece, Optional<StandingPiece> under, Findings findings) {
    long lift = piece.placement().rest().lift().micrometres();
    long right = under.map(carrier -> liftOn(setting, piece, carrier)).orElse(0L);
    if (Math.abs(lift - right) > ROUNDING) {
      floats(
          piece,
          "is lifted "
              + setting.wording().butIs(lift, right)
              + " over its shelf, where what carries it ends",
          findings);
    }
  }

  private static long liftOn(Setting setting, StandingPiece piece, StandingPiece carrier) {
    long base = carrier.placement().rest().lift().micrometres();
    Form form = carrier.made().form();
    double factor = form.shrinkage().factor(form.measuredAt(), setting.firing().kind().goesIn());
    Length adds =
        switch (piece.placement().rest().way().orElseThrow()) {
          case NESTED ->
              form.bisque()
                  .piled()
                  .map(piled -> piled.increment().scaledUp(factor))
                  .orElse(carrier.ware().height());
          case RIM_TO_RIM, FOOT_TO_FOOT -> carrier.ware().height();
          case INSIDE ->
              form.bisque()
                  .hollow()
                  .map(hollow -> form.profile().height().minus(hollow.deep()).scaledUp(factor))
                  .orElse(carrier.ware().height());
        };
    return base + adds.micrometres();
  }

  private static void straight(StandingPiece piece, StandingPiece carrier, Findings findings) {
    if (piece.shelf() != carrier.shelf()) {
      floats(piece, "rests on " + carrier.id() + ", which stands on another layer", findings);
    } else if (!piece.placement().at().equals(carrier.placement().at())) {
      floats(piece, "does not stand over the middle of " + carrier.id(), findings);
    } else if (!piece.placement().turn().equals(carrier.placement().turn())) {
      floats(piece, "is not turned as " + carrier.id() + " under it", findings);
    }
  }

  /** Widths are compared across, so both tolerances count twice. */
  private static void within(
      Setting setting, StandingPiece piece, StandingPiece carrier, Findings findings) {
    Optional<Hollow> hollow = carrier.made().form().bisque().hollow();
    if (hollow.isEmpty()) {
      return;
    }
    Form form = carrier.made().form();
    double factor = form.shrinkage().factor(form.measuredAt(), setting.firing().kind().goesIn());
    long slack = 2 * (piece.tolerance() + carrier.tolerance());
    long wide = (long) Math.floor(hollow.get().clear().width().micrometres() * factor) - slack;
    long deep = (long) Math.floor(hollow.get().clear().depth().micrometres() * factor) - slack;
    StandingWare ware = piece.ware();
    long needsWide = ware.foot().width().micrometres();
    long needsDeep = ware.foot().depth().micrometres();
    for (Band band : ware.bands()) {
      needsWide = Math.max(needsWide, band.outline().width().micrometres());
      needsDeep = Math.max(needsDeep, band.outline().depth().micrometres());
    }
    // A lug may point anywhere, so the narrower side of the hollow counts for it.
    for (Lug lug : ware.lugs()) {
      long across = 2 * lug.reach().micrometres();
      needsWide = across > Math.min(wide, deep) ? Math.max(needsWide, across) : needsWide;
      needsDeep = across > Math.min(wide, deep) ? Math.max(needsDeep, across) : needsDeep;
    }
    if (needsWide > wide || needsDeep > deep) {
      Wording wording = setting.wording();
      findings.add(
          Rule.PIECE_WIDER_THAN_HOLLOW,
          piece.layerId(),
          List.of(piece.id(), carrier.id()),
          String.format(
              Locale.ROOT,
              "%s is %s by %s wide, but the hollow of %s leaves %s by %s. Set it elsewhere.",
              piece.id(),
              wording.length(needsWide),
              wording.length(needsDeep),
              carrier.id(),
              wording.length(wide),
              wording.length(deep)));
    }
  }

  private static void floats(StandingPiece piece, String what, Findings findings) {
    findings.add(
        Rule.PIECE_FLOATS,
        piece.layerId(),
        List.of(piece.id()),
        piece.id() + " " + what + ". Set it down on what carries it.");
  }
}
