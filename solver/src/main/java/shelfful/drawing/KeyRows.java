package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.ware.Batch;

/**
 * The lines of a layer's key: the pieces by batch, then the posts. What all pieces of a batch share
 * is said once over them; each piece keeps its number, its place and where it points.
 */
final class KeyRows {
  private static final double GAP = 2.2;
  private static final double SAMPLE = 7;

  private final GlazePalette palette;
  private final ShelfPositions positions;
  private final double columnWidth;

  KeyRows(GlazePalette palette, ShelfPositions positions, double columnWidth) {
    this.palette = palette;
    this.positions = positions;
    this.columnWidth = columnWidth;
  }

  /** Lines for posts; none without any. */
  List<KeyRow> posts(List<PostMark> posts, LengthWords words) {
    List<KeyRow> rows = new ArrayList<>();
    if (!posts.isEmpty()) {
      rows.add(
          KeyRow.of(
              KeyRow.Kind.HEADING,
              strongAndQuiet("Posts", "and what stands at each, under this shelf and on it")));
    }
    List<List<String>> told = posts.stream().map(post -> told(post, words)).toList();
    KeyCells cells = new KeyCells(told);
    told.forEach(one -> rows.add((sheet, at, width) -> cells.draw(sheet, at, one, width)));
    return rows;
  }

  private List<String> told(PostMark post, LengthWords words) {
    List<String> told = new ArrayList<>();
    told.add(post.label());
    told.addAll(positions.of(post.at()));
    told.add(post.below().isEmpty() ? "" : "under " + words.stacked(post.below()));
    told.add(post.above().isEmpty() ? "" : "on " + words.stacked(post.above()));
    return told;
  }

  private static KeyRow.Drawing strongAndQuiet(String strong, String quiet) {
    return (sheet, at, width) -> {
      double end = sheet.text(at, strong, TextStyle.SMALL_STRONG, width);
      sheet.text(new Spot(end + GAP, at.y()), quiet, TextStyle.QUIET, at.x() + width - end - GAP);
    };
  }

  /**
   * Lines for pieces, batches in the order of their first number; airy gives glaze and batch a line
   * of their own.
   */
  List<KeyRow> pieces(List<SetPiece> pieces, boolean airy) {
    KeyCells cells = new KeyCells(pieces.stream().map(this::told).toList());
    int across = cells.across(columnWidth);
    List<KeyRow> rows = new ArrayList<>();
    for (List<SetPiece> group : byBatch(pieces).values()) {
      rows.addAll(headings(group, airy));
      for (int i = 0; i < group.size(); i += across) {
        List<SetPiece> side = group.subList(i, Math.min(i + across, group.size()));
        rows.add((sheet, at, width) -> sideBySide(sheet, at, side, cells));
      }
    }
    return rows;
  }

  private void sideBySide(SheetDraft sheet, Spot at, List<SetPiece> pieces, KeyCells cells) {
    double step = columnWidth / cells.across(columnWidth);
    for (int i = 0; i < pieces.size(); i++) {
      cells.draw(sheet, at.plus(i * step, 0), told(pieces.get(i)), columnWidth);
    }
  }

  /** Number, the two figures of its place, and where it points, if anywhere. */
  private List<String> told(SetPiece piece) {
    List<String> told = new ArrayList<>();
    told.add(Integer.toString(piece.number()));
    told.addAll(positions.of(piece.placement().at()));
    Optional<String> towards = piece.pointing().map(Clock::of).map(hour -> "→ " + hour);
    towards.ifPresent(told::add);
    return told;
  }

  private static Map<String, List<SetPiece>> byBatch(List<SetPiece> pieces) {
    Map<String, List<SetPiece>> groups = new LinkedHashMap<>();
    for (SetPiece piece : pieces) {
      String key =
          piece.piece().part()
              + " "
              + piece.placement().onCatcher()
              + " "
              + batches(piece)
              + PileWords.how(piece);
      groups.computeIfAbsent(key, same -> new ArrayList<>()).add(piece);
    }
    return groups;
  }

  private List<KeyRow> headings(List<SetPiece> group, boolean airy) {
    SetPiece first = group.get(0);
    GlazeSign sign = palette.of(first);
    String glaze = sign.letter().isEmpty() ? sign.name() : sign.letter() + " " + sign.name();
    String catcher = first.placement().onCatcher() ? ", on catchers" : "";
    String rest = glaze + catcher + ", " + shared(first);
    String count = group.size() + " × " + PileWords.named(first);
    if (!airy && fitsOneLine(count, rest)) {
      return List.of(KeyRow.of(KeyRow.Kind.HEADING, named(sign, count, rest)));
    }
    return List.of(
        KeyRow.of(KeyRow.Kind.HEADING, named(sign, count, "")),
        KeyRow.of(
            KeyRow.Kind.SUBHEADING,
            (sheet, at, width) -> sheet.text(at, rest, TextStyle.SMALL, width)));
  }

  private boolean fitsOneLine(String strong, String rest) {
    double width =
        SAMPLE
            + 2 * GAP
            + TextStyle.SMALL_STRONG.wording().width(strong)
            + TextStyle.SMALL.wording().width(rest);
    return width <= columnWidth;
  }

  private static String shared(SetPiece piece) {
    Batch batch = piece.piece().batch();
    String batches = piece.above().isEmpty() ? batch.id() : batches(piece);
    return "batch " + batches + batch.order().map(order -> ", order " + order).orElse("");
  }

  /** Pieces of one pile may come from several lines of the list. */
  private static String batches(SetPiece piece) {
    return piece.all().stream()
        .map(one -> one.piece().batch().id())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static KeyRow.Drawing named(GlazeSign sign, String strong, String rest) {
    return (sheet, at, width) -> {
      sign.sample(sheet, new Box(at.x(), at.y() - 2.4, at.x() + SAMPLE, at.y() + 0.5));
      double most = width - SAMPLE - GAP;
      double end = sheet.text(at.plus(SAMPLE + GAP, 0), strong, TextStyle.SMALL_STRONG, most);
      sheet.text(new Spot(end + GAP, at.y()), rest, TextStyle.SMALL, at.x() + width - end - GAP);
    };
  }
}
