package shelfful.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.files.PlanReader;
import shelfful.files.PlanWriter;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.Inspection;
import shelfful.inspect.Inspector;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.ware.Piece;

/** Holds what is claimed of remedies against the loads themselves. */
final class Claims {
  private Claims() {}

  /** What is wrong with the explanations of a load; empty when every claim holds. */
  static List<String> wrong(InspectedLoad start, List<Explanation> explanations) {
    List<String> wrong = new ArrayList<>();
    Set<String> explained =
        explanations.stream()
            .flatMap(one -> one.group().pieceIds().stream())
            .collect(Collectors.toSet());
    start.load().leftOut().stream()
        .filter(one -> !explained.contains(one.pieceId()))
        .forEach(one -> wrong.add(one.pieceId() + " is not explained"));
    for (Explanation one : explanations) {
      if (one.trials().isEmpty()) {
        wrong.add(one.group().batch().id() + ": nothing was tried");
      }
      if (one.remedies().isEmpty() && !one.inVain().startsWith("No remedy was found")) {
        wrong.add(one.group().batch().id() + ": it is not said that there is no remedy");
      }
      one.remedies().forEach(remedy -> wrong.addAll(wrong(start.load(), one.group(), remedy)));
    }
    return wrong;
  }

  private static List<String> wrong(Load start, WaitingGroup group, Remedy remedy) {
    List<String> wrong = new ArrayList<>();
    Load after = remedy.load().load();
    String name = group.batch().id() + " " + remedy.kind() + ": ";
    if (!(new Inspector().inspect(after) instanceof Inspection.Passed)) {
      wrong.add(name + "the judge refuses the load");
    }
    Load reread = PlanReader.read("remedy", PlanWriter.bytes(remedy.load())).found().orElse(null);
    if (!after.equals(reread)) {
      wrong.add(name + "the plan file does not hold the load");
    }
    int before = remedy.kind().isInThisFiring() ? in(start, group) : 0;
    if (in(after, group) - before < remedy.placed() && remedy.kind().isInThisFiring()) {
      wrong.add(name + "it places fewer than it says");
    }
    if (in(after, group) <= before) {
      wrong.add(name + "it places nothing");
    }
    if (remedy.sentence().isBlank()) {
      wrong.add(name + "it says nothing");
    }
    if (remedy.kind().isInThisFiring()) {
      wrong.addAll(wrongKind(start, remedy, name));
    }
    return wrong;
  }

  private static List<String> wrongKind(Load start, Remedy remedy, String name) {
    Change change = Change.between(start, remedy.load().load());
    List<String> wrong = new ArrayList<>();
    boolean loses = !change.losesNothing();
    boolean mayLose =
        remedy.kind() == RemedyKind.OTHERS_WAIT || remedy.kind() == RemedyKind.MUST_GO_DROPPED;
    if (loses != mayLose) {
      wrong.add(name + "what waits instead is not as the kind says: " + change);
    }
    boolean still =
        remedy.kind() == RemedyKind.AS_IT_STANDS
            || remedy.kind() == RemedyKind.OTHER_POSTS
            || remedy.kind() == RemedyKind.MORE_FURNITURE;
    if (still && change.moved() > 0) {
      wrong.add(name + change.moved() + " pieces moved");
    }
    if (remedy.kind() == RemedyKind.AS_IT_STANDS && !change.leavesFurniture()) {
      wrong.add(name + "shelves or posts changed");
    }
    boolean risk = remedy.relaxedBy().isPresent();
    if (risk != remedy.kind().isRisk() || risk && !remedy.sentence().contains("RISK")) {
      wrong.add(name + "the risk is not told");
    }
    boolean sameStudio = start.request().studio().equals(remedy.request().studio());
    if (sameStudio == (risk || remedy.kind() == RemedyKind.MORE_FURNITURE)) {
      wrong.add(name + "the studio is not changed as the kind says");
    }
    return wrong;
  }

  /** How many pieces like those of the group stand in a load. */
  static int in(Load load, WaitingGroup group) {
    Set<String> standing =
        load.layers().stream()
            .flatMap(layer -> layer.placements().stream())
            .map(Placement::pieceId)
            .collect(Collectors.toSet());
    return (int)
        load.request().pieces().stream()
            .filter(piece -> piece.batch().id().equals(group.batch().id()))
            .filter(piece -> piece.part() == group.part())
            .map(Piece::id)
            .filter(standing::contains)
            .count();
  }
}
