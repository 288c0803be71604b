package shelfful.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shelfful.inspect.StandingPiece.MadePiece;
import shelfful.kiln.Column;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.studio.Studio;
import shelfful.ware.Catcher;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/** Follows the names in a load to the things they stand for, and says which lead nowhere. */
final class SettingReader {
  private final Load load;
  private final Studio studio;
  private final Findings findings;

  private SettingReader(Load load, Findings findings) {
    this.load = load;
    this.studio = load.request().studio();
    this.findings = findings;
  }

  static Setting read(Load load, Findings findings) {
    return new SettingReader(load, findings).setting();
  }

  private Setting setting() {
    Kiln kiln = load.request().kiln();
    List<Column> columns = columns(kiln);
    Map<String, MadePiece> list = list();
    List<LaidShelf> shelves = new ArrayList<>();
    List<StandingPiece> pieces = new ArrayList<>();
    for (Layer layer : load.layers()) {
      Optional<LaidShelf> shelf = shelf(layer, columns);
      shelf.ifPresent(shelves::add);
      for (Placement placement : layer.placements()) {
        Optional<MadePiece> made = made(placement, layer, list);
        if (made.isPresent() && shelf.isPresent()) {
          piece(made.get(), placement, shelf.get()).ifPresent(pieces::add);
        }
      }
    }
    return new Setting(load, kiln, columns, list, shelves, posts(), pieces);
  }

  private List<Column> columns(Kiln kiln) {
    return kiln.columnPlans().stream()
        .filter(plan -> plan.id().equals(load.columnPlanId()))
        .findFirst()
        .map(plan -> plan.columns())
        .orElseGet(
            () -> {
              unknown("", "The kiln has no column plan " + load.columnPlanId());
              return List.of();
            });
  }

  private Map<String, MadePiece> list() {
    Map<String, MadePiece> list = new LinkedHashMap<>();
    for (Piece piece : load.request().pieces()) {
      Form form = studio.form(piece.batch().formId()).orElseThrow();
      Optional<Glaze> glaze = piece.batch().glazeId().flatMap(studio::glaze);
      if (list.put(piece.id(), new MadePiece(piece, form, glaze)) != null) {
        unknown("", "The list has two pieces with the id " + piece.id());
      }
    }
    return list;
  }

  private Optional<LaidShelf> shelf(Layer layer, List<Column> columns) {
    Optional<Column> column =
        columns.stream().filter(known -> known.id().equals(layer.columnId())).findFirst();
    Optional<Shelf> shelf = studio.shelf(layer.shelfId());
    if (column.isEmpty()) {
      unknown(
          layer.id(),
          String.format(
              Locale.ROOT, "Layer %s is in an unknown column %s", layer.id(), layer.columnId()));
    }
    if (shelf.isEmpty()) {
      unknown(
          layer.id(),
          String.format(
              Locale.ROOT,
              "Layer %s is an unknown kind of shelf, %s",
              layer.id(),
              layer.shelfId()));
    }
    if (column.isEmpty() || shelf.isEmpty()) {
      return Optional.empty();
    }
    if (layer.place() < 0 || layer.place() >= column.get().places().size()) {
      findings.add(
          Rule.SHELF_NOT_IN_PLACE,
          layer.id(),
          String.format(
              Locale.ROOT,
              "Layer %s lies in place %d of column %s, which has %d. Lay it in a place of the column.",
              layer.id(),
              layer.place() + 1,
              layer.columnId(),
              column.get().places().size()));
      return Optional.empty();
    }
    return Optional.of(LaidShelf.of(layer, column.get(), shelf.get()));
  }

  private Optional<MadePiece> made(Placement placement, Layer layer, Map<String, MadePiece> list) {
    MadePiece made = list.get(placement.pieceId());
    if (made == null) {
      findings.add(
          Rule.IDS_KNOWN_AND_UNIQUE,
          layer.id(),
          List.of(placement.pieceId()),
          String.format(
              Locale.ROOT,
              "Layer %s holds %s, which is not on the list. Take it off.",
              layer.id(),
              placement.pieceId()));
    }
    return Optional.ofNullable(made);
  }

  private Optional<StandingPiece> piece(MadePiece made, Placement placement, LaidShelf shelf) {
    Optional<Catcher> catcher =
        placement.onCatcher() ? Optional.of(studio.rules().catcher()) : Optional.empty();
    try {
      StandingWare ware =
          StandingWare.of(
              made.form(), made.piece().part(), load.request().firing().kind().goesIn(), catcher);
      return Optional.of(StandingPiece.of(made, placement, shelf, ware));
    } catch (IllegalArgumentException tooSmallToShrink) {
      findings.add(
          Rule.FIGURE_BEYOND_REASON,
          shelf.id(),
          List.of(made.piece().id()),
          String.format(
              Locale.ROOT,
              "The sizes of form %s cannot be taken at this stage: %s. Correct the form.",
              made.form().id(),
              tooSmallToShrink.getMessage()));
      return Optional.empty();
    }
  }

  private List<StoodPost> posts() {
    List<StoodPost> posts = new ArrayList<>();
    for (StandingPost standing : load.posts()) {
      List<Post> pieces = new ArrayList<>();
      for (String id : standing.postIds()) {
        studio
            .post(id)
            .ifPresentOrElse(
                pieces::add, () -> unknown("", "A standing post is of an unknown kind, " + id));
      }
      if (pieces.size() == standing.postIds().size()) {
        posts.add(new StoodPost(standing, List.copyOf(pieces)));
      }
    }
    return posts;
  }

  private void unknown(String layerId, String what) {
    findings.add(
        Rule.IDS_KNOWN_AND_UNIQUE, layerId, what + ". Correct the name or add what it names.");
  }
}
