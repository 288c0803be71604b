package shelfful.inspect;

import java.util.List;
import java.util.Locale;
import shelfful.measure.Mass;

/** What stands on a shelf is no heavier than its limit. */
final class ShelfMassCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    for (LaidShelf laid : setting.shelves()) {
      List<StandingPiece> pieces = setting.piecesOn(laid);
      Mass mass = massOf(pieces);
      if (laid.shelf().massLimit().filter(limit -> mass.compareTo(limit) > 0).isPresent()) {
        findings.add(
            Rule.SHELF_OVERLOADED,
            laid.id(),
            pieces.stream().map(StandingPiece::id).toList(),
            String.format(
                Locale.ROOT,
                "Layer %s carries %s, but its shelf may carry %s. Take off at least %s.",
                laid.id(),
                Wording.mass(mass),
                Wording.mass(laid.shelf().massLimit().get()),
                Wording.mass(new Mass(mass.grams() - laid.shelf().massLimit().get().grams()))));
      }
    }
  }

  static Mass massOf(List<StandingPiece> pieces) {
    Mass mass = Mass.ZERO;
    for (StandingPiece piece : pieces) {
      mass = mass.plus(piece.ware().mass());
    }
    return mass;
  }
}
