package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shelfful.drawing.LayerList;
import shelfful.inspect.Neighbours;
import shelfful.measure.LengthText;
import shelfful.ui.hand.FigureText;
import shelfful.ui.lists.PieceRow;
import shelfful.ui.words.Words;

/** The rows of what stands on a layer: each piece with its neighbour and how it stands. */
record PieceRows(Words words, ShownLoad load) {

  /** The rows of a layer, in its order. */
  List<PieceRow> of(LayerList layer) {
    Set<String> faulty =
        load.judged().faults().stream()
            .flatMap(fault -> fault.pieceIds().stream())
            .collect(Collectors.toSet());
    return layer.rows().stream().map(row -> row(row, faulty.contains(row.pieceId()))).toList();
  }

  private PieceRow row(LayerList.Row piece, boolean faulty) {
    Optional<Neighbours.Nearest> nearest = load.neighbours().of(piece.pieceId());
    FigureText figures = new FigureText(load.unit());
    return new PieceRow(
        piece,
        nearest.map(Neighbours.Nearest::gap).map(figures::of).orElse(""),
        nearest.map(Neighbours.Nearest::pieceId).flatMap(load::numberOf).orElse(""),
        status(piece, faulty));
  }

  private String status(LayerList.Row piece, boolean faulty) {
    StringBuilder status = new StringBuilder();
    status.append(words.of("in.rowSize", LengthText.write(piece.across(), load.unit())));
    if (load.plan().isPinned(piece.pieceId())) {
      status.append(words.of("in.rowPinned"));
    }
    if (faulty) {
      status.append(words.of("in.rowFaulty"));
    }
    return status.toString();
  }
}
