package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.Finding;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.LayerFigures;
import shelfful.inspect.Stamped;
import shelfful.kiln.Column;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Angle;
import shelfful.measure.Cone;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.LidPlace;
import shelfful.ware.Stage;
import shelfful.ware.Zone;

/**
 * Builds loads by hand, piece after piece. What is set need not obey the rules of a setting: only
 * drawing is tested with it.
 */
final class HandMadeLoad {
  private final Studio studio;
  private final Kiln kiln;
  private final List<Batch> batches = new ArrayList<>();
  private final List<Layer> layers = new ArrayList<>();
  private final List<StandingPost> posts = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final List<LayerFigures> figures = new ArrayList<>();
  private final List<Finding> wishes = new ArrayList<>();
  private final Map<String, Integer> used = new LinkedHashMap<>();
  private List<Placement> placements = new ArrayList<>();

  HandMadeLoad(Studio studio, String kilnId) {
    this.studio = studio;
    this.kiln = studio.kiln(kilnId).orElseThrow();
  }

  HandMadeLoad batch(String id, String form, String glaze, int quantity, String order) {
    batches.add(
        new Batch(
            id,
            form,
            Optional.ofNullable(glaze),
            quantity,
            Stage.GLAZED,
            Optional.empty(),
            false,
            1,
            Optional.empty(),
            Optional.ofNullable(order),
            Optional.empty(),
            LidPlace.ON));
    return this;
  }

  /** Sets the next piece of a batch on the layer that is added next. */
  HandMadeLoad set(String batch, double x, double y, double turn, boolean onCatcher) {
    int number = used.merge(batch, 1, Integer::sum);
    String id = batch + "-" + (number < 10 ? "00" : number < 100 ? "0" : "") + number;
    placements.add(new Placement(id, Point.ofMillimetres(x, y), Angle.ofDegrees(turn), onCatcher));
    return this;
  }

  HandMadeLoad set(String batch, double x, double y) {
    return set(batch, x, y, 0, false);
  }

  /** Ends a layer: its shelf on posts of these kinds at its column's places, from a base height. */
  HandMadeLoad layer(
      String id, String columnId, int level, double base, double z, String... postIds) {
    Column column =
        kiln.columnPlans().get(0).columns().stream()
            .filter(one -> one.id().equals(columnId))
            .findFirst()
            .orElseThrow();
    String shelfId = column.places().get(0).shelfIds().get(0);
    layers.add(new Layer(id, columnId, level, 0, shelfId, Length.ofMillimetres(z), placements));
    for (Point at : column.posts()) {
      posts.add(new StandingPost(at, Length.ofMillimetres(base), List.of(postIds), List.of(id)));
    }
    placements = new ArrayList<>();
    return this;
  }

  HandMadeLoad figures(double gap, double clear, double kilograms) {
    String id = layers.get(layers.size() - 1).id();
    figures.add(
        new LayerFigures(
            id,
            Optional.of(Length.ofMillimetres(gap)),
            Length.ofMillimetres(clear),
            Mass.ofKilograms(kilograms),
            Zone.MIDDLE));
    return this;
  }

  /** The rest of a batch waits. */
  HandMadeLoad waits(String batchId, LeftOut.Reason reason, String sentence, String mend) {
    Batch batch =
        batches.stream().filter(one -> one.id().equals(batchId)).findFirst().orElseThrow();
    shelfful.ware.Piece.of(batch, studio.form(batch.formId()).orElseThrow()).stream()
        .skip(used.getOrDefault(batchId, 0))
        .forEach(piece -> leftOut.add(new LeftOut(piece.id(), reason, sentence, mend)));
    return this;
  }

  HandMadeLoad wish(String layerId, String sentence) {
    wishes.add(new Finding("zoneNotLiked", Finding.Severity.WISH, layerId, List.of(), sentence));
    return this;
  }

  InspectedLoad stamped() {
    LoadRequest request =
        new LoadRequest(
            studio,
            batches,
            new Firing(kiln.id(), FiringKind.GLAZE, new Cone("6"), 1, Atmosphere.OXIDATION),
            Optional.empty(),
            Optional.of(java.time.LocalDate.of(2026, 3, 9)),
            7,
            20_000);
    Load load = new Load(request, kiln.columnPlans().get(0).id(), layers, posts, leftOut);
    return Stamped.load(load, figures, wishes);
  }
}
