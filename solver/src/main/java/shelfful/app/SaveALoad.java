package shelfful.app;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.PdfSurface;
import shelfful.files.AtomicSave;
import shelfful.files.PlanWriter;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;

/** Saves what a load is handed out as. Only a load that breaks no rule can be. */
public final class SaveALoad {
  private SaveALoad() {}

  /** Saves the plan file; empty, or a sentence that says why it could not. */
  public static Optional<String> plan(InspectedLoad load, Path file) {
    return save(PlanWriter.bytes(load), file);
  }

  /** Saves the loading sheets as PDF; empty, or a sentence that says why it could not. */
  public static Optional<String> sheets(LoadDrawing drawing, Path file) {
    return save(PdfSurface.bytes(drawing), file);
  }

  /** Saves a file in one step; empty, or a sentence that says why it could not. */
  static Optional<String> save(byte[] bytes, Path file) {
    try {
      AtomicSave.save(file, bytes);
      return Optional.empty();
    } catch (SaveFailed failed) {
      return Optional.of(failed.sentence());
    }
  }
}
