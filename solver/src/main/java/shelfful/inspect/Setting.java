package shelfful.inspect;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.kiln.Column;
import shelfful.kiln.Kiln;
import shelfful.load.Firing;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;

/**
 * A load with every name followed to the thing it stands for and every outline in the chamber
 * frame. What could not be followed is not in it; there is a finding about it already.
 *
 * @param load as given
 * @param kiln of the firing
 * @param columns of the column plan used
 * @param list every piece of the list by its id
 * @param shelves in the order of the layers
 * @param posts in the order of the load
 * @param pieces in the order of the layers
 */
record Setting(
    Load load,
    Kiln kiln,
    List<Column> columns,
    Map<String, StandingPiece.MadePiece> list,
    List<LaidShelf> shelves,
    List<StoodPost> posts,
    List<StandingPiece> pieces) {

  LoadRequest request() {
    return load.request();
  }

  Firing firing() {
    return request().firing();
  }

  HouseRules rules() {
    return request().studio().rules();
  }

  Clearances clearances() {
    return rules().clearances();
  }

  Wording wording() {
    return new Wording(request().studio().unit());
  }

  Room chamber() {
    return ChamberRoom.of(kiln.chamber().floorPlan());
  }

  long chamberHeight() {
    return kiln.chamber().height().micrometres();
  }

  List<LaidShelf> shelvesOf(Column column) {
    return shelves.stream().filter(shelf -> shelf.column().id().equals(column.id())).toList();
  }

  List<LaidShelf> level(Column column, int level) {
    return shelvesOf(column).stream().filter(shelf -> shelf.layer().level() == level).toList();
  }

  List<StandingPiece> piecesOn(LaidShelf shelf) {
    return pieces.stream().filter(piece -> piece.shelf() == shelf).toList();
  }

  Optional<Column> column(String id) {
    return columns.stream().filter(column -> column.id().equals(id)).findFirst();
  }

  /**
   * How high a column reaches: its highest shelf, else whatever it would stand on, else the floor.
   */
  long topOf(Column column) {
    return shelvesOf(column).stream()
        .mapToLong(LaidShelf::top)
        .max()
        .orElseGet(() -> baseOf(column));
  }

  /** The height that the lowest posts of a column stand at. */
  long baseOf(Column column) {
    return column.standsOn().stream()
        .flatMap(id -> column(id).stream())
        .mapToLong(this::topOf)
        .max()
        .orElse(0);
  }
}
