package shelfful.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.Layer;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.ware.Piece;

/**
 * A layer of a plan and the pieces on it. For whoever reads the file by eye or with another
 * program, each piece also says its form, batch and height; when a plan is read these must agree
 * with the list and the layer.
 */
final class LayerFormat {
  private static final int MOST_LEVELS = 1000;

  private LayerFormat() {}

  static Optional<Layer> read(FieldReader fields, Map<String, Piece> pieces, KeptMarks marks) {
    String id = fields.name("id");
    String column = fields.id("column");
    int level = fields.whole("level", 1, MOST_LEVELS);
    int place = fields.whole("place", 0, MOST_LEVELS);
    String shelf = fields.id("shelf");
    Length z = fields.length("z", LengthRange.PLACE);
    if (fields.flag("locked", false)) {
      marks.lock(id);
    }
    List<Placement> placements =
        fields.objects("pieces", piece -> readPiece(piece, z, pieces, marks));
    return fields.make(() -> new Layer(id, column, level, place, shelf, z, placements));
  }

  private static Optional<Placement> readPiece(
      FieldReader fields, Length layerZ, Map<String, Piece> pieces, KeptMarks marks) {
    String id = fields.name("piece");
    String form = fields.id("form");
    String batch = fields.id("batch");
    Length x = fields.length("x", LengthRange.PLACE);
    Length y = fields.length("y", LengthRange.PLACE);
    Length z = fields.length("z", LengthRange.PLACE);
    Angle turn = fields.required("turn", AngleFormat::read, Angle.ZERO);
    boolean catcher = fields.flag("catcher", false);
    RestFormat.Read rest =
        fields.optionalObject("rest", RestFormat::read).orElse(RestFormat.Read.PLAIN);
    if (fields.flag("pinned", false)) {
      marks.pin(id);
    }
    if (fields.isStillGood()) {
      if (rest.on().isEmpty()) {
        agrees(fields, "z", FileNumber.written(z), FileNumber.written(layerZ));
      }
      checkPiece(fields, id, new Claim(form, batch), pieces);
    }
    return fields.make(
        () -> new Placement(id, new Point(x, y), turn, catcher, rest.lifted(z.minus(layerZ))));
  }

  private static void checkPiece(
      FieldReader fields, String id, Claim claim, Map<String, Piece> pieces) {
    Piece piece = pieces.get(id);
    if (piece == null) {
      fields.fault(
          "piece",
          "The batches have no piece " + Shown.quoted(id) + ".",
          "Name a piece of the batches.");
      return;
    }
    agrees(fields, "form", claim.form(), piece.batch().formId());
    agrees(fields, "batch", claim.batch(), piece.batch().id());
  }

  private static void agrees(FieldReader fields, String field, String here, String elsewhere) {
    if (!here.equals(elsewhere)) {
      fields.fault(
          field,
          Shown.quoted(here)
              + " does not agree with "
              + Shown.quoted(elsewhere)
              + " elsewhere in the plan.",
          "Make both the same.");
    }
  }

  static void write(Layer layer, FieldWriter fields, Map<String, Piece> pieces, KeptMarks marks) {
    fields
        .text("id", layer.id())
        .text("column", layer.columnId())
        .whole("level", layer.level())
        .whole("place", layer.place())
        .text("shelf", layer.shelfId())
        .length("z", layer.z());
    if (marks.isLocked(layer.id())) {
      fields.flag("locked", true);
    }
    fields.objects(
        "pieces",
        layer.placements(),
        (placement, inner) -> {
          writePiece(placement, layer.z(), pieces.get(placement.pieceId()), inner);
          if (marks.isPinned(placement.pieceId())) {
            inner.flag("pinned", true);
          }
        });
  }

  private static void writePiece(Placement placement, Length z, Piece piece, FieldWriter fields) {
    fields
        .text("piece", placement.pieceId())
        .text("form", piece.batch().formId())
        .text("batch", piece.batch().id())
        .length("x", placement.at().x())
        .length("y", placement.at().y())
        .length("z", z.plus(placement.rest().lift()))
        .angle("turn", placement.turn())
        .flag("catcher", placement.onCatcher());
    if (!placement.rest().isPlain()) {
      fields.object("rest", placement.rest(), RestFormat::write);
    }
  }

  private record Claim(String form, String batch) {}
}
