package shelfful.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shelfful.inspect.JudgedLoad;
import shelfful.load.LeftOut;
import shelfful.measure.LengthUnit;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;

/**
 * The whole load as lists, with the numbers and figures of its sheets.
 *
 * @param firing what is fired, in a line
 * @param counts how many are in and how many wait, in a line
 * @param layers in loading order
 * @param waiting alike pieces together, in the order they were left out
 */
public record LoadLists(
    String firing, String counts, List<LayerList> layers, List<Waiting> waiting) {
  /** Takes its own copies. */
  public LoadLists {
    layers = List.copyOf(layers);
    waiting = List.copyOf(waiting);
  }

  /**
   * Pieces of one batch that wait for one reason.
   *
   * @param count how many
   * @param what form, glaze and batch
   * @param reason a sentence with its numbers
   * @param mend one thing that would help; may be empty
   * @param pieceIds which, in the order they were left out
   */
  public record Waiting(int count, String what, String reason, String mend, List<String> pieceIds) {
    /** Takes its own copy. */
    public Waiting {
      pieceIds = List.copyOf(pieceIds);
    }
  }

  /**
   * Lists a load.
   *
   * @param load seen by the judge
   * @param unit every length is written in
   */
  public static LoadLists of(JudgedLoad load, LengthUnit unit) {
    Setting setting = new Setting(load);
    GlazePalette palette = new GlazePalette(setting);
    LengthWords words = new LengthWords(unit);
    List<LayerList> layers =
        setting.layers().stream()
            .map(layer -> LayerList.of(setting, palette, words, layer))
            .toList();
    return new LoadLists(
        FiringWords.of(setting), FiringWords.counts(setting), layers, waiting(setting));
  }

  static List<Waiting> waiting(Setting setting) {
    Map<Waiting, List<String>> alike = new LinkedHashMap<>();
    for (LeftOut out : setting.load().leftOut()) {
      Piece piece = setting.piece(out.pieceId()).orElseThrow();
      Waiting one = new Waiting(1, what(setting, piece), out.sentence(), out.mend(), List.of());
      alike.computeIfAbsent(one, row -> new ArrayList<>()).add(piece.id());
    }
    List<Waiting> waiting = new ArrayList<>();
    alike.forEach(
        (one, ids) ->
            waiting.add(new Waiting(ids.size(), one.what(), one.reason(), one.mend(), ids)));
    return waiting;
  }

  private static String what(Setting setting, Piece piece) {
    Batch batch = piece.batch();
    Form form = setting.studio().form(batch.formId()).orElseThrow();
    String glaze =
        batch.glazeId().flatMap(setting.studio()::glaze).map(Glaze::name).orElse("not glazed");
    return form.name() + ", " + glaze + ", batch " + batch.id();
  }
}
