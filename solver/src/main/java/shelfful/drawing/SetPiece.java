package shelfful.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * A piece where it stands, with all that is drawn or written of it, and with it whatever rests on
 * or in it: the pile is one body on the shelf.
 *
 * @param number on its layer in the order of setting, from 1
 * @param ware as it stands, on its catcher if it has one; of a pile all of it
 * @param bare the same without the catcher
 * @param above what rests on or in it, from below upwards
 */
record SetPiece(
    int number,
    Placement placement,
    Piece piece,
    Form form,
    Optional<Glaze> glaze,
    StandingWare ware,
    StandingWare bare,
    List<SetPiece> above) {
  private static final int HALF_TURN = 180_000;

  SetPiece numbered(int order) {
    return new SetPiece(order, placement, piece, form, glaze, ware, bare, above);
  }

  /** How many pieces it is, with all that rests on or in it. */
  int count() {
    return 1 + above.size();
  }

  /** It and all that rests on or in it, from below upwards. */
  List<SetPiece> all() {
    return Stream.concat(Stream.of(this), above.stream()).toList();
  }

  /** Whether it is a piece or has it on or in it. */
  boolean holds(String pieceId) {
    return all().stream().anyMatch(one -> one.piece().id().equals(pieceId));
  }

  double x() {
    return placement.at().x().millimetres();
  }

  double y() {
    return placement.at().y().millimetres();
  }

  /** The outline that covers most, the catcher's included. */
  Outline widest() {
    return widest(ware);
  }

  /** The outline of the pot itself that covers most. */
  Outline body() {
    return widest(bare);
  }

  private static Outline widest(StandingWare ware) {
    return ware.bands().stream()
        .map(Band::outline)
        .max(Comparator.comparingDouble(SetPiece::cover))
        .orElse(ware.foot());
  }

  private static double cover(Outline outline) {
    return outline.width().millimetres() * outline.depth().millimetres();
  }

  /** What a potter calls it: the form's name, and which part of it where it has a lid. */
  String name() {
    return switch (piece.part()) {
      case POT -> form.lid().isPresent() ? form.name() + ", without lid" : form.name();
      case POT_WITH_LID -> form.name() + ", lid on";
      case LID -> form.name() + ", lid";
    };
  }

  /** Where its handle points, or the far end of its long side; empty for what is round all over. */
  Optional<Angle> pointing() {
    Optional<Angle> lug = bare.lugs().stream().findFirst().map(Lug::direction);
    return lug.map(this::turned).or(this::longSide);
  }

  private Optional<Angle> longSide() {
    Outline outline = body();
    if (outline.width().equals(outline.depth())) {
      return Optional.empty();
    }
    boolean wide = outline.width().isLongerThan(outline.depth());
    int turned = turned(wide ? Angle.ZERO : Angle.ofDegrees(90)).millidegrees();
    return Optional.of(new Angle(turned % HALF_TURN));
  }

  private Angle turned(Angle own) {
    return new Angle(own.millidegrees() + placement.turn().millidegrees());
  }
}
