package shelfful.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.kiln.Kiln;
import shelfful.studio.Studio;
import shelfful.ware.Batch;
import shelfful.ware.Catcher;
import shelfful.ware.FiringKind;
import shelfful.ware.Form;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/**
 * What is asked for one firing.
 *
 * @param studio everything there is to work with
 * @param batches the list; ids unique, every form and glaze known to the studio
 * @param firing what is to be fired, where and how
 * @param columnPlanId the column plan to use, or empty to choose the best of the kiln's
 * @param day of the firing, against which due dates count; empty when due dates do not count
 * @param seed of the search: the same seed and steps give the same load
 * @param steps how long to search, in steps of the search; 0 when the search is ended by time or by
 *     hand, and is then not repeatable
 * @param kept what must stay as it is, or empty to plan everything anew; never present and empty
 */
public record LoadRequest(
    Studio studio,
    List<Batch> batches,
    Firing firing,
    Optional<String> columnPlanId,
    Optional<LocalDate> day,
    long seed,
    long steps,
    Optional<KeptSetting> kept) {
  /** Takes its own copy and refuses batches whose form or glaze the studio does not have. */
  public LoadRequest {
    batches = List.copyOf(batches);
    kept = kept.filter(setting -> !setting.isEmpty());
    if (steps < 0) {
      throw new IllegalArgumentException("Steps must not be negative: " + steps);
    }
    for (Batch batch : batches) {
      if (studio.form(batch.formId()).isEmpty()) {
        throw new IllegalArgumentException(
            "Batch " + batch.id() + " is of a form the studio lacks: " + batch.formId());
      }
      batch.glazeId().ifPresent(id -> requireGlaze(studio, batch, id));
    }
    if (studio.kiln(firing.kilnId()).isEmpty()) {
      throw new IllegalArgumentException("The studio has no kiln " + firing.kilnId());
    }
  }

  /** A request with nothing that must stay. */
  public LoadRequest(
      Studio studio,
      List<Batch> batches,
      Firing firing,
      Optional<String> columnPlanId,
      Optional<LocalDate> day,
      long seed,
      long steps) {
    this(studio, batches, firing, columnPlanId, day, seed, steps, Optional.empty());
  }

  /** The same with other things that must stay; an empty setting keeps nothing. */
  public LoadRequest keeping(KeptSetting setting) {
    return new LoadRequest(
        studio, batches, firing, columnPlanId, day, seed, steps, Optional.of(setting));
  }

  /** The same with nothing that must stay: any setting of the list answers it. */
  public LoadRequest keepingNothing() {
    return new LoadRequest(studio, batches, firing, columnPlanId, day, seed, steps);
  }

  private static void requireGlaze(Studio studio, Batch batch, String glazeId) {
    if (studio.glaze(glazeId).isEmpty()) {
      throw new IllegalArgumentException(
          "Batch " + batch.id() + " is in a glaze the studio lacks: " + glazeId);
    }
  }

  /** The kiln that is fired. */
  public Kiln kiln() {
    return studio.kiln(firing.kilnId()).orElseThrow();
  }

  /** What goes under a piece in this firing, if anything does; nothing runs in a bisque firing. */
  public Optional<Catcher> catcher(Piece piece) {
    Form form = form(piece);
    return piece
        .batch()
        .glazeId()
        .filter(id -> firing.kind() == FiringKind.GLAZE)
        .flatMap(studio::glaze)
        .filter(glaze -> glaze.needsCatcherUnder(form))
        .map(glaze -> studio.rules().catcher());
  }

  /** A piece as it stands in this firing, with what goes under it. */
  public StandingWare standing(Piece piece) {
    return StandingWare.of(form(piece), piece.part(), firing.kind().goesIn(), catcher(piece));
  }

  private Form form(Piece piece) {
    return studio.form(piece.batch().formId()).orElseThrow();
  }

  /** Every single piece of the list, batch by batch. */
  public List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    for (Batch batch : batches) {
      Form form = studio.form(batch.formId()).orElseThrow();
      pieces.addAll(Piece.of(batch, form));
    }
    return List.copyOf(pieces);
  }
}
