package shelfful.drawing;

import java.util.List;
import shelfful.load.Layer;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Outline;

/**
 * What stands on one layer, in words: the numbers, names and figures of its sheet, for readers that
 * a picture does not reach.
 *
 * @param layerId the layer
 * @param shelf its shelf as the potter calls it
 * @param order in which the layer is loaded, from 1
 * @param clearHeight over the shelf, with its unit
 * @param explained what the figures of a place are
 * @param rows in the order the pieces are set
 */
public record LayerList(
    String layerId, String shelf, int order, String clearHeight, String explained, List<Row> rows) {
  /** Takes its own copy. */
  public LayerList {
    rows = List.copyOf(rows);
  }

  /**
   * One piece, or a pile as one.
   *
   * @param number on the sheet
   * @param pieceId the piece, of a pile the lowest
   * @param form as the potter calls it; of a pile also how it is set
   * @param glaze letter and name, or that it is not glazed; and the catcher, where it has one
   * @param place the figures of its place
   * @param pointing where its handle or long side points, on a clock; empty when it is round
   * @param at its axis, chamber frame
   * @param across its widest outline's longer side
   * @param upwards of a pile each further piece and where it goes, from below upwards
   */
  public record Row(
      int number,
      String pieceId,
      String form,
      String glaze,
      String place,
      String pointing,
      Point at,
      Length across,
      List<Upper> upwards) {
    /** Takes its own copy. */
    public Row {
      upwards = List.copyOf(upwards);
    }

    /** Whether it is about a piece, the lowest of a pile or one further up. */
    public boolean holds(String id) {
      return pieceId.equals(id) || upwards.stream().anyMatch(one -> one.pieceId().equals(id));
    }
  }

  /**
   * A piece of a pile that does not stand on the shelf.
   *
   * @param pieceId the piece
   * @param told which it is and what it goes on or in
   */
  public record Upper(String pieceId, String told) {}

  static LayerList of(Setting setting, GlazePalette palette, LengthWords words, Layer layer) {
    ShelfPositions positions = new ShelfPositions(setting, layer, words);
    List<Row> rows =
        setting.on(layer).stream().map(piece -> row(piece, palette, positions)).toList();
    return new LayerList(
        layer.id(),
        setting.shelf(layer).name(),
        setting.layers().indexOf(layer) + 1,
        words.full(setting.clearHeight(layer)),
        positions.explained(),
        rows);
  }

  private static Row row(SetPiece piece, GlazePalette palette, ShelfPositions positions) {
    Outline widest = piece.widest();
    GlazeSign sign = palette.of(piece);
    String catcher = piece.placement().onCatcher() ? ", on a catcher" : "";
    return new Row(
        piece.number(),
        piece.piece().id(),
        PileWords.named(piece),
        (sign.letter() + " " + sign.name() + catcher).strip(),
        String.join("   ", positions.of(piece.placement().at())),
        piece.pointing().map(Clock::of).map(hour -> "→ " + hour).orElse(""),
        piece.placement().at(),
        Length.longer(widest.width(), widest.depth()),
        PileWords.upwards(piece));
  }
}
