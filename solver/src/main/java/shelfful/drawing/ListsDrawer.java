package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.Finding;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.StandingPost;
import shelfful.ware.Piece;

/**
 * The lists after the cover, as long as they need to be: layers, ware to fetch by form and glaze,
 * wishes not met, what waits.
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
    flow.section("Ware by form and glaze, in loading order", 2 * Table.PITCH);
    flow.table(ware());
    wishes(flow);
    waits(flow);
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
              Integer.toString(LayerHeading.count(setting.on(layer)))));
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
    return new Table(
        List.of(
            new Table.Column("", 1, false),
            new Table.Column("glaze", 4.2, false),
            new Table.Column("form", 6, false),
            new Table.Column("pieces", 1.7, true),
            new Table.Column("how many on which layer", 9, false)),
        new PickList(setting).kinds().stream().map(this::ware).toList());
  }

  private Table.Row ware(PickList.Kind kind) {
    GlazeSign sign = palette.of(kind.first());
    String glaze = sign.letter().isEmpty() ? sign.name() : sign.letter() + "  " + sign.name();
    String count = Integer.toString(kind.count());
    return new Table.Row(
        List.of("", glaze, kind.first().name(), count, kind.places()), Optional.of(sign));
  }

  /** By what would help, so that this is said once for all it helps. */
  private void waits(Flow flow) {
    Map<String, Map<List<String>, Integer>> byMend = new LinkedHashMap<>();
    for (LeftOut one : setting.load().leftOut()) {
      String what = setting.piece(one.pieceId()).map(this::batch).orElse(one.pieceId());
      byMend
          .computeIfAbsent(one.mend(), same -> new LinkedHashMap<>())
          .merge(List.of(what, one.sentence()), 1, Integer::sum);
    }
    if (!byMend.isEmpty()) {
      flow.section("What waits, and why", 5 * Table.PITCH);
    }
    byMend.forEach(
        (mend, groups) -> {
          flow.remark(mend);
          groups.forEach(
              (group, count) -> flow.entry(count + " × " + group.get(0), List.of(group.get(1))));
        });
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
