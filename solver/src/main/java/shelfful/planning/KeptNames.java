package shelfful.planning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.load.KeptProblem;
import shelfful.load.KeptProblem.Code;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.ware.Piece;

/** Whether everything that a kept setting names is there. */
final class KeptNames {
  private final LoadRequest request;
  private final KeptSetting kept;
  private final List<KeptProblem> problems = new ArrayList<>();

  private KeptNames(LoadRequest request, KeptSetting kept) {
    this.request = request;
    this.kept = kept;
  }

  /** What is not; while there is anything, nothing more can be said of the setting. */
  static List<KeptProblem> problems(LoadRequest request) {
    return request.kept().map(kept -> new KeptNames(request, kept).find()).orElse(List.of());
  }

  private List<KeptProblem> find() {
    Optional<ColumnPlan> plan =
        request.kiln().columnPlans().stream()
            .filter(known -> known.id().equals(kept.columnPlanId()))
            .findFirst();
    boolean other = request.columnPlanId().stream().anyMatch(id -> !id.equals(kept.columnPlanId()));
    if (plan.isEmpty() || other) {
      add(
          Code.OTHER_COLUMN_PLAN,
          List.of(),
          String.format(
              Locale.ROOT,
              "What is kept stands in the column plan %s, which %s.",
              kept.columnPlanId(),
              plan.isEmpty() ? "the kiln does not have" : "is not the one asked for"),
          "Ask for that column plan, or release what is kept.");
      return problems;
    }
    kept.standing().forEach(pin -> place(plan.get(), pin.layer(), List.of(pin.pieceId())));
    kept.layers().forEach(layer -> place(plan.get(), layer.layer(), List.of()));
    pieces();
    if (problems.isEmpty()) {
      LockedNames.problems(request, kept, plan.get()).forEach(problems::add);
    }
    return problems;
  }

  private void place(ColumnPlan plan, LayerPlace at, List<String> pieces) {
    boolean there = column(plan, at.columnId()).stream().anyMatch(c -> at.place() < places(c));
    if (!there) {
      add(
          Code.NO_SUCH_LAYER,
          pieces,
          String.format(
              Locale.ROOT,
              "Column plan %s has no place %d in a column %s, where %s is kept.",
              plan.id(),
              at.place(),
              at.columnId(),
              pieces.isEmpty() ? "a layer" : pieces.get(0)),
          "Release it.");
    }
  }

  private static int places(Column column) {
    return column.places().size();
  }

  static Optional<Column> column(ColumnPlan plan, String id) {
    return plan.columns().stream().filter(column -> column.id().equals(id)).findFirst();
  }

  private void pieces() {
    Set<String> listed = request.pieces().stream().map(Piece::id).collect(Collectors.toSet());
    Map<String, PinnedPiece> known = new LinkedHashMap<>();
    Set<LayerPlace> locked = new HashSet<>();
    Set<String> onLocked = new HashSet<>();
    for (LockedLayer layer : kept.layers()) {
      locked.add(layer.layer());
      layer.placements().forEach(one -> onLocked.add(one.pieceId()));
    }
    for (PinnedPiece pin : kept.standing()) {
      String id = pin.pieceId();
      if (!listed.contains(id)) {
        add(
            Code.NOT_ON_THE_LIST,
            List.of(id),
            "The list has no piece " + id + ", which is kept.",
            "Put it on the list again, or release it.");
      }
      boolean lockedOut = locked.contains(pin.layer()) && !onLocked.contains(id);
      if (known.put(id, pin) != null || lockedOut) {
        add(
            Code.IN_TWO_PLACES,
            List.of(id),
            id + (lockedOut ? " is pinned on a locked layer without it." : " is kept twice."),
            "Release one of the two.");
      }
    }
    known.values().forEach(pin -> rests(pin, known));
  }

  private void rests(PinnedPiece pin, Map<String, PinnedPiece> known) {
    Optional<String> on = pin.rest().on();
    PinnedPiece carrier = on.map(known::get).orElse(null);
    boolean there =
        on.isEmpty()
            || carrier != null
                && carrier.layer().equals(pin.layer())
                && carrier.at().equals(pin.at())
                && carrier.rest().lift().compareTo(pin.rest().lift()) < 0;
    if (!there) {
      add(
          Code.PILE_NOT_WHOLE,
          List.of(pin.pieceId()),
          pin.pieceId() + " is kept on " + on.get() + ", which is not kept under it.",
          "Keep the whole pile, or release " + pin.pieceId() + ".");
    }
  }

  private void add(Code code, List<String> pieces, String sentence, String mend) {
    problems.add(new KeptProblem(code, pieces, sentence, mend));
  }
}
