package shelfful.app;

import java.util.ArrayList;
import java.util.Arrays;
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
import shelfful.ware.Piece;

/**
 * Tells of a batch, when it is put on a list, that its ware goes into no kiln of the studio, not
 * even alone. The rest of the list can be planned all the same. Remembers what it was asked.
 */
public final class TooLarge {
  /** For a batch that names no cone: common practice, no source. */
  private static final Cone USUAL_BISQUE = new Cone("04");

  private final Studio studio;
  private final Map<Firing, EvenAlone> firings = new HashMap<>();

  /** For the kilns of a studio. */
  public TooLarge(Studio studio) {
    this.studio = studio;
  }

  /**
   * Why no kiln takes a batch's ware, as told for the first. Empty when some kiln takes it, or when
   * it goes into no firing as it is.
   */
  public Optional<LeftOut> refuses(Batch batch) {
    return Arrays.stream(FiringKind.values())
        .filter(kind -> kind.goesIn() == batch.stage())
        .findFirst()
        .flatMap(kind -> refuses(batch, kind));
  }

  private Optional<LeftOut> refuses(Batch batch, FiringKind kind) {
    // All pots of a batch are alike, and so are their lids.
    List<Piece> pieces =
        Piece.of(batch, studio.form(batch.formId()).orElseThrow()).stream()
            .filter(piece -> piece.number() == 1)
            .toList();
    Cone cone =
        batch
            .cone()
            .or(() -> batch.glazeId().flatMap(studio::glaze).map(Glaze::cone))
            .orElse(USUAL_BISQUE);
    List<LeftOut> refused = new ArrayList<>();
    for (Kiln kiln : studio.kilns()) {
      Firing firing = new Firing(kiln.id(), kind, cone, 0, Atmosphere.OXIDATION);
      EvenAlone alone = firings.computeIfAbsent(firing, this::alone);
      Optional<LeftOut> why =
          pieces.stream().map(alone::refuses).flatMap(Optional::stream).findFirst();
      if (why.isEmpty()) {
        return why;
      }
      refused.add(why.get());
    }
    return refused.stream().findFirst();
  }

  private EvenAlone alone(Firing firing) {
    return new EvenAlone(
        new LoadRequest(studio, List.of(), firing, Optional.empty(), Optional.empty(), 1, 0));
  }
}
