package shelfful.ui.firings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.FiringFolder;
import shelfful.drawing.LayerList;
import shelfful.inspect.InspectedLoad;
import shelfful.record.FiredPiece;
import shelfful.record.Grade;
import shelfful.record.PieceResult;
import shelfful.record.UnpackedFiring;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/**
 * Unpacking the chosen firing layer by layer, without any widget: pieces are chosen and marked, and
 * every mark is kept at once. Used on the screen's thread alone.
 */
public final class UnpackingViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final FiringBook book;
  private final ReadOnlyObjectWrapper<List<UnpackedRow>> rows =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyStringWrapper layerId = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper pieceId = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<List<String>> causes = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyIntegerWrapper turn = new ReadOnlyIntegerWrapper();
  private Optional<FiringPicture> picture = Optional.empty();
  private String shown = "";

  /** Follows the firing that is chosen in a book. */
  public UnpackingViewModel(Words words, TaskRunner tasks, FiringBook book) {
    this.words = words;
    this.tasks = tasks;
    this.book = book;
    causes.set(ownCauses());
    book.chosen().addListener((property, was, is) -> follow());
    book.plan().addListener((property, was, is) -> draw());
    book.folder().addListener((property, was, is) -> causes.set(ownCauses()));
    follow();
    draw();
  }

  /** What stood on the chosen layer. */
  public ReadOnlyObjectProperty<List<UnpackedRow>> rows() {
    return rows.getReadOnlyProperty();
  }

  /** Counts on whenever the list or its drawing may look different, also where rows are alike. */
  public ReadOnlyIntegerProperty turn() {
    return turn.getReadOnlyProperty();
  }

  /** The chosen layer; empty text without a firing. */
  public ReadOnlyStringProperty layerId() {
    return layerId.getReadOnlyProperty();
  }

  /** The chosen piece; empty text when none is. */
  public ReadOnlyStringProperty pieceId() {
    return pieceId.getReadOnlyProperty();
  }

  /** What can be wrong, as the potter lists it. */
  public ReadOnlyObjectProperty<List<String>> causes() {
    return causes.getReadOnlyProperty();
  }

  /** Every layer of the firing in the order it is unpacked: from the top. */
  public List<String> layers() {
    List<String> loaded =
        picture
            .map(one -> one.lists().layers().stream().map(LayerList::layerId).toList())
            .orElseGet(
                () -> pieces().stream().map(FiredPiece::layerId).distinct().sorted().toList());
    List<String> fromTheTop = new ArrayList<>(loaded);
    Collections.reverse(fromTheTop);
    return fromTheTop;
  }

  /** The layer's name with how many of its pieces were looked at. */
  public String told(String layer) {
    List<FiredPiece> on = on(layer);
    long seen = on.stream().filter(one -> result(one.pieceId()).isPresent()).count();
    return words.of("unpack.layer", layer, seen, on.size());
  }

  /** The shelves as they were loaded; empty where the plan is not at hand. */
  Optional<FiringPicture> picture() {
    return picture;
  }

  /** How the pieces of the chosen layer came out, of those looked at. */
  Map<String, Grade> grades() {
    Map<String, Grade> grades = new HashMap<>();
    rows.get()
        .forEach(row -> row.result().ifPresent(one -> grades.put(row.pieceId(), one.grade())));
    return grades;
  }

  private List<FiredPiece> pieces() {
    return book.chosen().get().map(one -> one.record().pieces()).orElse(List.of());
  }

  private List<FiredPiece> on(String layer) {
    return pieces().stream().filter(piece -> piece.layerId().equals(layer)).toList();
  }

  private Optional<PieceResult> result(String piece) {
    return book.chosen().get().flatMap(firing -> firing.result(piece));
  }

  private void follow() {
    String id = book.chosen().get().map(UnpackedFiring::record).map(one -> one.id()).orElse("");
    if (!id.equals(shown)) {
      shown = id;
      picture = Optional.empty();
      pieceId.set("");
      layerId.set(layers().stream().findFirst().orElse(""));
    }
    show(layerId.get());
  }

  /** The plan comes a little later than its firing, and its drawing a little later than that. */
  private void draw() {
    Optional<InspectedLoad> plan = book.plan().get();
    if (plan.isEmpty()) {
      draw(Optional.empty());
      return;
    }
    InspectedLoad load = plan.get();
    tasks.start(
        () -> FiringPicture.of(load),
        drawn -> {
          if (book.plan().get().filter(now -> now == load).isPresent()) {
            draw(Optional.of(drawn));
          }
        },
        fault -> book.tell("book.failed", fault));
  }

  private void draw(Optional<FiringPicture> other) {
    picture = other;
    if (!layers().contains(layerId.get()) || pieceId.get().isEmpty()) {
      layerId.set(layers().stream().findFirst().orElse(""));
    }
    show(layerId.get());
  }

  private void show(String layer) {
    rows.set(rowsOf(layer));
    turn.set(turn.get() + 1);
  }

  private List<UnpackedRow> rowsOf(String layer) {
    Optional<LayerList> list = picture.flatMap(one -> one.layer(layer));
    List<UnpackedRow> all = new ArrayList<>();
    if (list.isPresent()) {
      for (LayerList.Row row : list.get().rows()) {
        String what = words.of("unpack.what", row.form(), row.glaze());
        all.add(new UnpackedRow(row.number(), row.pieceId(), what, result(row.pieceId())));
        for (LayerList.Upper upper : row.upwards()) {
          String id = upper.pieceId();
          all.add(new UnpackedRow(row.number(), id, upper.told(), result(id)));
        }
      }
      return all;
    }
    for (FiredPiece piece : on(layer)) {
      String glaze = piece.glazeId().orElse(words.of("why.noGlaze"));
      String what = words.of("unpack.what", piece.formId(), glaze);
      all.add(new UnpackedRow(all.size() + 1, piece.pieceId(), what, result(piece.pieceId())));
    }
    return all;
  }

  /** Chooses a layer; one that the firing does not have is passed over. */
  public void chooseLayer(String id) {
    if (layers().contains(id) && !id.equals(layerId.get())) {
      layerId.set(id);
      pieceId.set("");
      show(id);
    }
  }

  /** Chooses a piece of the layer, or none with empty text. */
  public void choose(String piece) {
    pieceId.set(rows.get().stream().anyMatch(row -> row.pieceId().equals(piece)) ? piece : "");
  }

  /**
   * Marks the chosen piece and goes on to the next that nobody has looked at. A piece marked before
   * is marked anew; the last mark holds.
   *
   * @param cause what is wrong, of no meaning for a good piece; blank when nobody can say. With one
   *     that cannot be kept nothing is marked, and why is told
   */
  public void mark(Grade grade, String cause) {
    String piece = pieceId.get();
    if (piece.isEmpty()) {
      return;
    }
    Optional<String> wrong =
        Optional.of(cause.strip()).filter(text -> grade.isFlawed() && !text.isEmpty());
    if (wrong.isPresent() && !FiringFolder.isSound(wrong.get())) {
      book.tell("unpack.badCause", FiringFolder.longest());
      return;
    }
    if (book.add(List.of(new PieceResult(piece, grade, wrong)))) {
      wrong.ifPresent(this::learn);
      nextUnseen(piece).ifPresent(this::choose);
    }
  }

  private Optional<String> nextUnseen(String after) {
    List<UnpackedRow> all = rows.get();
    List<String> ids = all.stream().map(UnpackedRow::pieceId).toList();
    int from = ids.indexOf(after);
    for (int i = 1; i < all.size(); i++) {
      UnpackedRow row = all.get((from + i) % all.size());
      if (row.result().isEmpty()) {
        return Optional.of(row.pieceId());
      }
    }
    return Optional.empty();
  }

  /** Marks everything on the layer that nobody has looked at as good. */
  public void restIsGood() {
    book.add(
        rows.get().stream()
            .filter(row -> row.result().isEmpty())
            .map(row -> new PieceResult(row.pieceId(), Grade.GOOD, Optional.empty()))
            .toList());
  }

  /** The usual causes in the reader's language, unless the potter keeps a list of her own. */
  private List<String> ownCauses() {
    List<String> own = book.folder().get().causes();
    return own.isEmpty() ? List.of(words.of("unpack.causes").split("\\|")) : own;
  }

  /** A cause that is typed for the first time is on the list from then on. */
  private void learn(String cause) {
    List<String> more = new ArrayList<>(ownCauses());
    if (!more.contains(cause)) {
      more.add(cause);
      changeCauses(more);
    }
  }

  /** Takes a cause off the list; pieces marked with it keep it. */
  public void forget(String cause) {
    changeCauses(ownCauses().stream().filter(one -> !one.equals(cause)).toList());
  }

  private void changeCauses(List<String> others) {
    if (!book.madeUp().get()) {
      book.folder()
          .get()
          .keepCauses(others)
          .ifPresent(trouble -> book.tell("unpack.causesNotKept", trouble));
      causes.set(ownCauses());
    }
  }
}
