package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shelfful.inspect.Finding;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.StandingPost;
import shelfful.ware.Piece;

/**
 * The lists after the cover, as long as they need to be: layers, ware to fetch, wishes not met,
 * what waits.
 */
final class ListsDrawer {
  private final Setting setting;
  private final GlazePalette palette;
  private final LengthWords words;

  ListsDrawer(Setting setting, GlazePalette palette, LengthWords words) {
    this.setting = setting;
    this.palette = palette;
    this.words = words;
  }

  void draw(Pages pages, List<FetchList.Item> toFetch) {
    Flow flow = new Flow(pages, "Lists for " + setting.kiln().name());
    if (!toFetch.isEmpty()) {
      flow.section("Fetch, continued", 2 * Table.PITCH);
      flow.table(fetch(toFetch));
    }
    flow.section(
        "Layers in the order they are loaded, lengths in " + words.unitWord(), 2 * Table.PITCH);
    flow.table(layers());
    flow.section("Ware to fetch, in loading order", 2 * Table.PITCH);
    flow.table(ware());
    waits(flow);
    wishes(flow);
  }

  private static Table fetch(List<FetchList.Item> items) {
    return new Table(
        List.of(new Table.Column("how many", 1, true), new Table.Column("what", 8, false)),
        items.stream().map(item -> Table.Row.of(item.count() + " ×", item.name())).toList());
  }

  private Table layers() {
    List<Table.Row> rows = new ArrayList<>();
    PostWords postWords = new PostWords(setting, words);
    for (Layer layer : setting.layers()) {
      List<StandingPost> under = setting.under(layer);
      String posts = under.isEmpty() ? "–" : postWords.countedBare(under);
      rows.add(
          Table.Row.of(
              layer.id(),
              layer.columnId() + ", level " + layer.level(),
              setting.shelf(layer).name(),
              posts,
              words.bare(layer.z()),
              words.bare(setting.clearHeight(layer)),
              Integer.toString(setting.on(layer).size())));
    }
    return new Table(
        List.of(
            new Table.Column("layer", 2, false),
            new Table.Column("column", 4.2, false),
            new Table.Column("shelf", 5.6, false),
            new Table.Column("posts under it", 4.4, false),
            new Table.Column("top at", 2.2, true),
            new Table.Column("clear", 2.2, true),
            new Table.Column("pieces", 1.7, true)),
        rows);
  }

  private Table ware() {
    Map<String, List<SetPiece>> kinds = new LinkedHashMap<>();
    Map<String, Map<String, Integer>> onLayers = new LinkedHashMap<>();
    for (Layer layer : setting.layers()) {
      for (SetPiece piece : setting.on(layer)) {
        String kind =
            piece.form().id() + " " + piece.piece().part() + " " + piece.piece().batch().glazeId();
        kinds.computeIfAbsent(kind, same -> new ArrayList<>()).add(piece);
        onLayers
            .computeIfAbsent(kind, same -> new LinkedHashMap<>())
            .merge(layer.id(), 1, Integer::sum);
      }
    }
    List<Table.Row> rows = new ArrayList<>();
    kinds.forEach((kind, pieces) -> rows.add(ware(pieces, onLayers.get(kind))));
    return new Table(
        List.of(
            new Table.Column("", 1, false),
            new Table.Column("glaze", 4.2, false),
            new Table.Column("form", 6, false),
            new Table.Column("pieces", 1.7, true),
            new Table.Column("how many on which layer", 9, false)),
        rows);
  }

  private Table.Row ware(List<SetPiece> pieces, Map<String, Integer> onLayers) {
    SetPiece first = pieces.get(0);
    GlazeSign sign = palette.of(first);
    String layers =
        onLayers.entrySet().stream()
            .map(entry -> entry.getValue() + " on " + entry.getKey())
            .collect(Collectors.joining(", "));
    String glaze = sign.letter().isEmpty() ? sign.name() : sign.letter() + "  " + sign.name();
    return new Table.Row(
        List.of("", glaze, first.name(), Integer.toString(pieces.size()), layers),
        Optional.of(sign));
  }

  private void waits(Flow flow) {
    Map<List<String>, Integer> groups = new LinkedHashMap<>();
    for (LeftOut one : setting.load().leftOut()) {
      String what = setting.piece(one.pieceId()).map(this::batch).orElse(one.pieceId());
      groups.merge(List.of(what, one.sentence(), one.mend()), 1, Integer::sum);
    }
    if (!groups.isEmpty()) {
      flow.section("What waits, and why", 4 * Table.PITCH);
    }
    groups.forEach(
        (group, count) ->
            flow.entry(count + " × " + group.get(0), List.of(group.get(1), group.get(2))));
  }

  private String batch(Piece piece) {
    String form = setting.studio().form(piece.batch().formId()).orElseThrow().name();
    String glaze =
        piece
            .batch()
            .glazeId()
            .flatMap(setting.studio()::glaze)
            .map(one -> " in " + one.name())
            .orElse("");
    String order = piece.batch().order().map(one -> ", order " + one).orElse("");
    return form + glaze + ", batch " + piece.batch().id() + order;
  }

  private void wishes(Flow flow) {
    List<Finding> wishes = setting.inspected().findings();
    if (!wishes.isEmpty()) {
      flow.section("Wishes of the house that are not met", 3 * Table.PITCH);
    }
    for (Finding wish : wishes) {
      String where = wish.layerId().isEmpty() ? "Whole load" : "Layer " + wish.layerId();
      flow.entry(where, List.of(wish.sentence()));
    }
  }
}
