package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ware.Piece;

/**
 * One group of waiting pieces on the table, with what was tried for it and what came out by the
 * way.
 */
final class WaitingCase {
  private final InspectedLoad start;
  private final WaitingGroup group;
  private final RemedyEffort effort;
  private final Runs runs;
  private final Set<String> mates;
  private final Set<String> first;
  private final List<InspectedLoad> byTheWay = new ArrayList<>();
  private final Replanning plan = new Replanning(this);
  private int tries;
  private String why = "";

  WaitingCase(InspectedLoad start, WaitingGroup group, RemedyEffort effort, Runs runs) {
    this.start = start;
    this.group = group;
    this.effort = effort;
    this.runs = runs;
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

  /** Through which everything is planned that is tried for it. */
  Runs runs() {
    return runs;
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

  /** Plans around what stands. */
  Replanning plan() {
    return plan;
  }

  /** Counts a load that was planned. */
  void countTry() {
    tries++;
  }

  /** Says why what is being tried cannot be. */
  void because(String sentence) {
    why = sentence;
  }

  /** Why what was tried last could not be; empty text where nobody said. */
  String takeWhy() {
    String taken = why;
    why = "";
    return taken;
  }

  /** How many more of the group's kind are in than before. */
  int gained(Load other) {
    return in(other) - in(load());
  }

  /** How many of the group's kind are in a load, of this firing or of another. */
  int in(Load some) {
    Set<String> alike = alike(some);
    return (int)
        some.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .filter(one -> alike.contains(one.pieceId()))
            .count();
  }

  /** The pieces of a load's list that are of the group's batch and part. */
  Set<String> alike(Load some) {
    return some.request().pieces().stream()
        .filter(piece -> piece.batch().id().equals(group.batch().id()))
        .filter(piece -> piece.part() == group.part())
        .map(Piece::id)
        .collect(Collectors.toSet());
  }

  /** Every piece that stands somewhere in the load as it is. */
  Set<String> standing() {
    return load().standing();
  }

  /** A piece of the list. */
  Piece piece(String id) {
    return request().pieces().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
