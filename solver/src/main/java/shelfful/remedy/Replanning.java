package shelfful.remedy;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import shelfful.app.FillUp;
import shelfful.app.PlanALoad;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspector;
import shelfful.load.KeptSetting;
import shelfful.load.Layer;
import shelfful.load.LayerPlace;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.load.LockedLayer;
import shelfful.load.PinnedPiece;
import shelfful.load.RequestChange;
import shelfful.ware.BatchChange;
import shelfful.ware.Piece;

/**
 * Plans a load again with a waiting group put first and much of the rest held still. Every answer
 * has more of the group in than the load as it is, and passed the judge.
 */
final class Replanning {
  private final WaitingCase one;
  private Optional<InspectedLoad> heldStill;

  Replanning(WaitingCase one) {
    this.one = one;
  }

  /**
   * The group planned in with every piece held where it stands on its layer: posts may change and
   * shelves be added, no ware moves. Where that cannot be planned, free places are filled. Planned
   * once.
   */
  Optional<InspectedLoad> heldStill() {
    if (heldStill == null) {
      PlanALoad planning = new PlanALoad(groupFirst(one.request()).keeping(kept(id -> true)));
      one.countTry();
      heldStill = planning.keptProblems().isEmpty() ? answer(one.request(), planning) : filledUp();
    }
    return heldStill;
  }

  /**
   * Puts the group into free places of the load and moves nothing: first one piece with what only
   * goes with it, for where one finds no place its likes find none, then all of them.
   */
  Optional<InspectedLoad> filledUp() {
    Piece piece = one.piece(one.group().pieceIds().get(0));
    Set<String> likeIt =
        one.request().pieces().stream()
            .filter(other -> other.setKey().equals(piece.setKey()))
            .map(Piece::id)
            .collect(Collectors.toSet());
    return filledUp(likeIt).map(first -> filledUp(one.mates()).orElse(first));
  }

  private Optional<InspectedLoad> filledUp(Set<String> wanted) {
    one.countTry();
    List<LeftOut> open =
        one.load().leftOut().stream()
            .map(one -> wanted.contains(one.pieceId()) ? asWaiting(one) : asTakenOut(one))
            .toList();
    Load asked = with(one.load(), open);
    Set<String> locked =
        one.request().kept().map(KeptSetting::layers).orElse(List.of()).stream()
            .map(LockedLayer::layer)
            .flatMap(
                place ->
                    one.load().layers().stream()
                        .filter(layer -> LayerPlace.of(layer).equals(place))
                        .map(Layer::id))
            .collect(Collectors.toSet());
    WorkPlan plan = new WorkPlan(asked, new TreeSet<>(), new TreeSet<>(locked));
    return one.runs()
        .run(new FillUp(plan), 0)
        .map(InspectedLoad::load)
        .filter(filled -> one.gained(filled) > 0)
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
    return one.load().leftOut().stream().filter(one -> waiting.contains(one.pieceId())).toList();
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
    one.countTry();
    PlanALoad planning = new PlanALoad(groupFirst(wish).keeping(kept(held)));
    return planning.keptProblems().isEmpty() ? answer(wish, planning) : Optional.empty();
  }

  /** The same with nothing held but what was kept already; the search begins from the load. */
  Optional<InspectedLoad> anew(LoadRequest wish) {
    one.countTry();
    PlanALoad planning = new PlanALoad(groupFirst(wish)).startFrom(one.start(), false);
    return planning.keptProblems().isEmpty() ? answer(wish, planning) : Optional.empty();
  }

  /**
   * From a load with several of the group in, one with a single one of them (and what only goes
   * with it), the room of the others given back first to batches that lost pieces by it.
   */
  Optional<InspectedLoad> withOneOnly(InspectedLoad found, Set<String> losers) {
    one.countTry();
    Set<String> before = one.standing();
    List<Piece> fresh =
        found.load().request().pieces().stream()
            .filter(piece -> one.mates().contains(piece.id()) && !before.contains(piece.id()))
            .toList();
    Set<String> standing = new HashSet<>(found.load().standing());
    Optional<String> stays =
        fresh.stream().filter(one -> standing.contains(one.id())).map(Piece::setKey).findFirst();
    fresh.stream()
        .filter(piece -> !stays.equals(Optional.of(piece.setKey())))
        .forEach(piece -> standing.remove(piece.id()));
    LoadRequest wish = found.load().request();
    LoadRequest asked =
        RequestChange.batches(wish, b -> BatchChange.mustGo(b, losers.contains(b.id())));
    List<LockedLayer> locked = one.request().kept().map(KeptSetting::layers).orElse(List.of());
    List<PinnedPiece> pins = KeptSetting.of(found.load(), standing, Set.of()).pieces();
    KeptSetting all = new KeptSetting(found.load().columnPlanId(), pins, locked);
    PlanALoad planning = new PlanALoad(asked.keeping(all));
    return planning.keptProblems().isEmpty() ? answer(wish, planning) : Optional.empty();
  }

  private Optional<InspectedLoad> answer(LoadRequest wish, PlanALoad planning) {
    return one.runs()
        .run(planning, one.effort().steps())
        .map(InspectedLoad::load)
        .filter(found -> one.gained(found) > 0)
        .map(
            found ->
                new Load(
                    wish, found.columnPlanId(), found.layers(), found.posts(), found.leftOut()))
        .flatMap(Replanning::judged);
  }

  static Optional<InspectedLoad> judged(Load load) {
    return new Inspector().inspect(load).passed();
  }

  private LoadRequest groupFirst(LoadRequest wish) {
    return RequestChange.batches(
        wish, batch -> one.first().contains(batch.id()) ? BatchChange.mustGo(batch, true) : batch);
  }

  /** What was kept stays kept, whatever is let go for this try. */
  private KeptSetting kept(Predicate<String> held) {
    List<LockedLayer> locked = one.request().kept().map(KeptSetting::layers).orElse(List.of());
    Set<LayerPlace> places = locked.stream().map(LockedLayer::layer).collect(Collectors.toSet());
    Set<String> pinned = new HashSet<>();
    one.request().kept().map(KeptSetting::pieces).orElse(List.of()).stream()
        .map(PinnedPiece::pieceId)
        .forEach(pinned::add);
    Set<String> pins =
        one.standing().stream()
            .filter(id -> pinned.contains(id) || held.test(id))
            .collect(Collectors.toSet());
    List<PinnedPiece> pieces =
        KeptSetting.of(one.load(), pins, Set.of()).pieces().stream()
            .filter(pin -> !places.contains(pin.layer()))
            .toList();
    return new KeptSetting(one.load().columnPlanId(), pieces, locked);
  }
}
