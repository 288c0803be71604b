package shelfful.remedy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import shelfful.app.FillUp;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.Placement;
import shelfful.load.RequestChange;
import shelfful.ware.BatchChange;
import shelfful.ware.Piece;

/**
 * One group of waiting pieces on the table: plans the load again with the group put first and much
 * of the rest held still, counts the tries, and keeps what came out.
 */
final class WaitingCase {
  private final InspectedLoad start;
  private final WaitingGroup group;
  private final RemedyEffort effort;
  private final Set<String> mates;
  private final Set<String> first;
  private final List<InspectedLoad> byTheWay = new ArrayList<>();
  private int tries;

  WaitingCase(InspectedLoad start, WaitingGroup group, RemedyEffort effort) {
    this.start = start;
    this.group = group;
    this.effort = effort;
    List<Piece> pieces = start.load().request().pieces();
    Set<String> sets =
        pieces.stream()
            .filter(piece -> group.pieceIds().contains(piece.id()))
            .map(Piece::setKey)
            .collect(Collectors.toSet());
    this.mates =
        pieces.stream()
            .filter(piece -> sets.contains(piece.setKey()))
            .map(Piece::id)
            .collect(Collectors.toSet());
    this.first =
        pieces.stream()
            .filter(piece -> mates.contains(piece.id()))
            .map(piece -> piece.batch().id())
            .collect(Collectors.toSet());
  }

  InspectedLoad start() {
    return start;
  }

  Load load() {
    return start.load();
  }

  LoadRequest request() {
    return start.load().request();
  }

  WaitingGroup group() {
    return group;
  }

  RemedyEffort effort() {
    return effort;
  }

  /** The pieces of the group and those that only go with them. */
  Set<String> mates() {
    return mates;
  }

  /** The batches of these. */
  Set<String> first() {
    return first;
  }

  /** Loads that brought a piece of the group in at a price that was not asked for. */
  List<InspectedLoad> byTheWay() {
    return byTheWay;
  }

  /** How many loads were planned since this was last asked. */
  int takeTries() {
    int taken = tries;
    tries = 0;
    return taken;
  }

  /** Counts a load that was planned elsewhere. */
  void countTry() {
    tries++;
  }

  /** How many more of the group's kind are in than before. */
  int gained(Load other) {
    return in(other) - in(load());
  }

  private int in(Load some) {
    Set<String> alike =
        some.request().pieces().stream()
            .filter(piece -> piece.batch().id().equals(group.batch().id()))
            .filter(piece -> piece.part() == group.part())
            .map(Piece::id)
            .collect(Collectors.toSet());
    return (int)
        some.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .filter(one -> alike.contains(one.pieceId()))
            .count();
  }

  /** Every piece that stands somewhere in the load as it is. */
  Set<String> standing() {
    return load().layers().stream()
        .flatMap(layer -> layer.placements().stream())
        .map(Placement::pieceId)
        .collect(Collectors.toSet());
  }

  /**
   * Puts the group into free places of the load and moves nothing: first one piece with what only
   * goes with it, for where one finds no place its likes find none, then all of them.
   */
  Optional<InspectedLoad> filledUp() {
    Piece piece = piece(group.pieceIds().get(0));
    Set<String> one =
        request().pieces().stream()
            .filter(other -> other.setKey().equals(piece.setKey()))
            .map(Piece::id)
            .collect(Collectors.toSet());
    return filledUp(one).map(first -> filledUp(mates).orElse(first));
  }

  /** A piece of the list. */
  Piece piece(String id) {
    return request().pieces().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private Optional<InspectedLoad> filledUp(Set<String> wanted) {
    tries++;
    List<LeftOut> open =
        load().leftOut().stream()
            .map(one -> wanted.contains(one.pieceId()) ? asWaiting(one) : asTakenOut(one))
            .toList();
    Load asked = with(load(), open);
    Set<String> locked =
        request().kept().map(KeptSetting::layers).orElse(List.of()).stream()
            .map(LockedLayer::layer)
            .flatMap(
                place ->
                    load().layers().stream()
                        .filter(layer -> LayerPlace.of(layer).equals(place))
                        .map(Layer::id))
            .collect(Collectors.toSet());
    WorkPlan plan = new WorkPlan(asked, new java.util.TreeSet<>(), new java.util.TreeSet<>(locked));
    return new FillUp(plan)
        .run(SearchLength.ofSteps(0), PlanListener.none())
        .map(InspectedLoad::load)
        .filter(filled -> gained(filled) > 0)
        .flatMap(filled -> judged(with(filled, stillWaiting(filled))));
  }

  private static LeftOut asWaiting(LeftOut one) {
    return new LeftOut(one.pieceId(), LeftOut.Reason.NO_ROOM, one.sentence(), one.mend());
  }

  private static LeftOut asTakenOut(LeftOut one) {
    return new LeftOut(one.pieceId(), LeftOut.Reason.TAKEN_OUT, one.sentence(), one.mend());
  }

  private List<LeftOut> stillWaiting(Load filled) {
    Set<String> waiting =
        filled.leftOut().stream().map(LeftOut::pieceId).collect(Collectors.toSet());
    return load().leftOut().stream().filter(one -> waiting.contains(one.pieceId())).toList();
  }

  private static Load with(Load load, List<LeftOut> leftOut) {
    return new Load(load.request(), load.columnPlanId(), load.layers(), load.posts(), leftOut);
  }

  /**
   * Plans a changed request with the group put first.
   *
   * @param wish what is asked; its pieces and batches have the ids of the load as it is
   * @param held which of the pieces that stand now stay where they stand
   * @return a load that the judge passed with more of the group in, or empty
   */
  Optional<InspectedLoad> around(LoadRequest wish, Predicate<String> held) {
    tries++;
    PlanALoad planning = new PlanALoad(groupFirst(wish).keeping(kept(held)));
    return planning.keptProblems().isEmpty() ? answer(wish, planning) : Optional.empty();
  }

  /** The same with nothing held but what was kept already; the search begins from the load. */
  Optional<InspectedLoad> anew(LoadRequest wish) {
    tries++;
    PlanALoad planning = new PlanALoad(groupFirst(wish)).startFrom(start, false);
    return planning.keptProblems().isEmpty() ? answer(wish, planning) : Optional.empty();
  }

  private Optional<InspectedLoad> answer(LoadRequest wish, PlanALoad planning) {
    return planning
        .run(SearchLength.ofSteps(effort.steps()), PlanListener.none())
        .map(InspectedLoad::load)
        .filter(found -> gained(found) > 0)
        .map(
            found ->
                new Load(
                    wish, found.columnPlanId(), found.layers(), found.posts(), found.leftOut()))
        .flatMap(WaitingCase::judged);
  }

  static Optional<InspectedLoad> judged(Load load) {
    return new Inspector().inspect(load) instanceof Inspection.Passed passed
        ? Optional.of(passed.load())
        : Optional.empty();
  }

  private LoadRequest groupFirst(LoadRequest wish) {
    return RequestChange.batches(
        wish, batch -> first.contains(batch.id()) ? BatchChange.mustGo(batch, true) : batch);
  }

  /** What was kept stays kept, whatever is let go for this try. */
  private KeptSetting kept(Predicate<String> held) {
    List<LockedLayer> locked = request().kept().map(KeptSetting::layers).orElse(List.of());
    Set<LayerPlace> places = locked.stream().map(LockedLayer::layer).collect(Collectors.toSet());
    Set<String> pinned = new HashSet<>();
    request().kept().map(KeptSetting::pieces).orElse(List.of()).stream()
        .map(PinnedPiece::pieceId)
        .forEach(pinned::add);
    Set<String> pins =
        standing().stream()
            .filter(id -> pinned.contains(id) || held.test(id))
            .collect(Collectors.toSet());
    List<PinnedPiece> pieces =
        KeptSetting.of(load(), pins, Set.of()).pieces().stream()
            .filter(pin -> !places.contains(pin.layer()))
            .toList();
    return new KeptSetting(load().columnPlanId(), pieces, locked);
  }
}
