package shelfful.inspect;

import java.util.List;
import java.util.Optional;

/**
 * Figures of a piece against the edges it stays inside of: the chamber's wall and its shelf's edge,
 * every straight edge by itself so that a piece can be brought into a corner.
 *
 * @param piece at the place asked about
 */
record PlaceEdges(Setting setting, StandingPiece piece) {

  void add(List<PlaceFigure> figures) {
    List<Footprint> body = piece.parts().stream().map(PiecePart::footprint).toList();
    long tolerance = piece.tolerance();
    Room shelf = piece.shelf().room();
    room(
        setting.chamber(),
        body,
        Rule.PIECE_TOO_CLOSE_TO_WALL,
        setting.clearances().wareToWall().micrometres() + tolerance,
        figures);
    room(
        shelf,
        List.of(piece.foot()),
        Rule.FOOT_OVER_EDGE,
        setting.clearances().footToShelfEdge().micrometres() + tolerance,
        figures);
    if (!setting.rules().bellyMayPassEdge()) {
      room(shelf, body, Rule.BODY_OVER_EDGE, tolerance, figures);
    }
  }

  private static void room(
      Room room, List<Footprint> body, Rule rule, long required, List<PlaceFigure> figures) {
    int edge = 0;
    for (Wall wall : room.walls()) {
      edge++;
      add(body.stream().map(part -> Approach.to(wall, part)).toList(), rule, edge, required)
          .ifPresent(figures::add);
    }
    int round = edge + 1;
    room.round()
        .flatMap(
            disc ->
                add(
                    body.stream().map(part -> Approach.toRound(disc, part)).toList(),
                    rule,
                    round,
                    required))
        .ifPresent(figures::add);
  }

  private static Optional<PlaceFigure> add(
      List<Approach> approaches, Rule rule, int edge, long required) {
    return approaches.stream()
        .reduce(Approach::orNearer)
        .filter(one -> one.distance().micrometres() <= required + PlaceJudge.NEAR)
        .map(one -> PlaceJudge.figure(rule, Integer.toString(edge), one, required));
  }
}
