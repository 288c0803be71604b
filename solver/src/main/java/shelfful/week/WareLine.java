package shelfful.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.ware.Stage;

/**
 * A batch with the dates of its making.
 *
 * @param batch its stage is the one it is at when the week begins; its day due is the day it must
 *     be unpacked from its last firing
 * @param made the day it was or will be made; counts for ware that is still wet or leather-hard
 * @param ready when it can go into its next firing, where somebody knows better than the pauses
 */
public record WareLine(Batch batch, Optional<LocalDate> made, Optional<LocalDateTime> ready) {

  /** The firings it still needs, in their order. */
  public List<FiringKind> needs() {
    if (batch.stage() == Stage.FINISHED) {
      return List.of();
    }
    if (batch.stage().compareTo(Stage.BONE_DRY) > 0) {
      return List.of(FiringKind.GLAZE);
    }
    boolean glazed = batch.glazeId().isPresent() || batch.cone().isPresent();
    return glazed ? List.of(FiringKind.BISQUE, FiringKind.GLAZE) : List.of(FiringKind.BISQUE);
  }

  /** Whether a firing of a kind is the last it needs. */
  public boolean isFinishedBy(FiringKind kind) {
    List<FiringKind> needs = needs();
    return !needs.isEmpty() && needs.get(needs.size() - 1) == kind;
  }

  /** When it can go into the first of them. */
  public LocalDateTime firstReady(LocalDateTime start, Pauses pauses) {
    LocalDateTime known = ready.orElseGet(() -> byThePauses(start, pauses));
    return known.isBefore(start) ? start : known;
  }

  private LocalDateTime byThePauses(LocalDateTime start, Pauses pauses) {
    return switch (batch.stage()) {
      case WET, LEATHER_HARD ->
          made.map(LocalDate::atStartOfDay).orElse(start).plusDays(pauses.dryingDays());
      case BISQUE -> start.plusDays(pauses.glazingDays());
      default -> start;
    };
  }

  /**
   * The batch as some of its pieces go into a firing: at the stage that goes in; in a bisque firing
   * without the glaze and the cone of the glaze firing to come.
   */
  public Batch going(FiringKind kind, int quantity) {
    boolean glaze = kind == FiringKind.GLAZE;
    return new Batch(
        batch.id(),
        batch.formId(),
        glaze ? batch.glazeId() : Optional.empty(),
        quantity,
        kind.goesIn(),
        glaze ? batch.cone() : Optional.empty(),
        false,
        batch.priority(),
        batch.due(),
        batch.order(),
        batch.set(),
        batch.lidPlace());
  }
}
