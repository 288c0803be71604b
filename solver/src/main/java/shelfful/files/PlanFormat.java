package shelfful.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.StandingPost;
import shelfful.ware.Piece;

/** The fields of a plan. It stands alone: the studio and the batches it was made from are in it. */
final class PlanFormat {
  private PlanFormat() {}

  static Optional<Load> read(FieldReader fields) {
    String columnPlan = fields.id("columnPlan");
    Optional<LoadRequest> request = RequestFormat.read(fields);
    if (request.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Piece> pieces = pieces(request.get());
    KeptMarks marks = new KeptMarks();
    List<Layer> layers = fields.objects("layers", layer -> LayerFormat.read(layer, pieces, marks));
    List<StandingPost> posts = fields.objects("posts", StandingPostFormat::read);
    List<LeftOut> leftOut = fields.objects("leftOut", LeftOutFormat::read);
    return fields.make(
        () -> marks.asked(new Load(request.get(), columnPlan, layers, posts, leftOut)));
  }

  private static Map<String, Piece> pieces(LoadRequest request) {
    Map<String, Piece> pieces = new HashMap<>();
    request.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    return pieces;
  }

  static void write(Load load, FieldWriter fields) {
    Map<String, Piece> pieces = pieces(load.request());
    KeptMarks marks = KeptMarks.of(load);
    RequestFormat.writeShort(load.request(), fields);
    fields
        .text("columnPlan", load.columnPlanId())
        .objects(
            "layers",
            load.layers(),
            (layer, inner) -> LayerFormat.write(layer, inner, pieces, marks))
        .objects("posts", load.posts(), StandingPostFormat::write)
        .objects("leftOut", load.leftOut(), LeftOutFormat::write);
    RequestFormat.writeLong(load.request(), fields);
  }
}
