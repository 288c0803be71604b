package shelfful.inspect;

import java.util.List;
import java.util.Locale;

/** The clearance under the lid, over ware and over shelves. */
final class LidCheck implements Check {
  @Override
  public void judge(Setting setting, Findings findings) {
    Wording wording = setting.wording();
    long clearance = setting.clearances().underLid().micrometres();
    Carriers carriers = Carriers.of(setting.pieces());
    for (StandingPiece piece : setting.pieces()) {
      long required = clearance + carriers.heightTolerance(piece);
      long over = setting.chamberHeight() - piece.top();
      if (over < required) {
        findings.add(
            Rule.PIECE_TOO_CLOSE_TO_LID,
            piece.layerId(),
            List.of(piece.id()),
            String.format(
                Locale.ROOT,
                "The distance from %s up to the lid is %s. Set its layer %s lower, or lower ware on it.",
                piece.id(),
                wording.butNeeds(over, required),
                wording.missing(over, required)));
      }
    }
    for (LaidShelf shelf : setting.shelves()) {
      long over = setting.chamberHeight() - shelf.top();
      if (over < clearance) {
        findings.add(
            Rule.COLUMN_TALLER_THAN_CHAMBER,
            shelf.id(),
            String.format(
                Locale.ROOT,
                "The distance from the shelf of layer %s up to the lid is %s. Use shorter posts or one layer less.",
                shelf.id(),
                wording.butNeeds(over, clearance)));
      }
    }
  }
}
