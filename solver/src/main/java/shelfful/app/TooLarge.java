package shelfful.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.LeftOut;
import shelfful.load.LoadRequest;
import shelfful.measure.Cone;
import shelfful.planning.EvenAlone;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.LidPlace;
import shelfful.ware.Piece;

/**
 * Tells of a batch, when it is put on a list, that its ware goes into no kiln of the studio, not
 * even alone. The rest of the list can be planned all the same. Remembers what it was asked.
 */
public final class TooLarge {
  /** For a batch that names no cone: common practice, no source. */
  private static final Cone USUAL_BISQUE = new Cone("04");

  private final Studio studio;
  private final Map<Ware, Optional<LeftOut>> known = new HashMap<>();

  /** For the kilns of a studio. */
  public TooLarge(Studio studio) {
    this.studio = studio;
  }

  /** What of a batch its size depends on. */
  private record Ware(String form, Optional<String> glaze, FiringKind kind, LidPlace lid) {}

  /**
   * Why no kiln takes a batch's ware, as told for the first. Empty when some kiln takes it, or when
   * it goes into no firing as it is.
   */
  public Optional<LeftOut> refuses(Batch batch) {
    for (FiringKind kind : FiringKind.values()) {
      if (kind.goesIn() == batch.stage()) {
        Ware ware = new Ware(batch.formId(), batch.glazeId(), kind, batch.lidPlace());
        return known.computeIfAbsent(ware, asked -> find(batch, kind));
      }
    }
    return Optional.empty();
  }

  private Optional<LeftOut> find(Batch batch, FiringKind kind) {
    List<LeftOut> refused = new ArrayList<>();
    for (Kiln kiln : studio.kilns()) {
      Optional<LeftOut> why = find(batch, kiln, kind);
      if (why.isEmpty()) {
        return why;
      }
      refused.add(why.get());
    }
    return refused.stream().findFirst();
  }

  private Optional<LeftOut> find(Batch batch, Kiln kiln, FiringKind kind) {
    Cone cone =
        batch
            .cone()
            .or(() -> batch.glazeId().flatMap(studio::glaze).map(Glaze::cone))
            .orElse(USUAL_BISQUE);
    Firing firing = new Firing(kiln.id(), kind, cone, 0, Atmosphere.OXIDATION);
    LoadRequest request =
        new LoadRequest(studio, List.of(batch), firing, Optional.empty(), Optional.empty(), 1, 0);
    EvenAlone alone = new EvenAlone(request);
    List<Piece> pieces = request.pieces();
    return pieces.stream().map(alone::refuses).flatMap(Optional::stream).findFirst();
  }
}
