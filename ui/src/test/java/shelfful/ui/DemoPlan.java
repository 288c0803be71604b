package shelfful.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import shelfful.app.OpenAList;
import shelfful.app.Opened;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.drawing.LoadDrawing;
import shelfful.drawing.PaperSize;
import shelfful.files.PlanWriter;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;

/** A plan of the demo list, planned once for all tests: the first load the planner finds. */
public final class DemoPlan {
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final InspectedLoad LOAD =
      new PlanALoad(request()).run(SearchLength.ofSteps(0), PlanListener.none()).orElseThrow();

  private DemoPlan() {}

  public static InspectedLoad load() {
    return LOAD;
  }

  /** Its sheets. */
  public static LoadDrawing drawing() {
    return LoadDrawing.of(LOAD, PaperSize.A4, LOAD.load().request().studio().unit());
  }

  /** Its file, written into a folder. */
  public static Path file(Path folder) {
    return write(folder.resolve("demo.plan.json"), PlanWriter.bytes(LOAD));
  }

  /** Writes a file and returns its path. */
  public static Path write(Path file, byte[] bytes) {
    try {
      return Files.write(file, bytes);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static LoadRequest request() {
    Opened<LoadRequest> opened =
        OpenAList.open(document("studio.json"), document("list-60.csv"), LocalDate.of(2026, 6, 1));
    return ((Opened.Ready<LoadRequest>) opened).value();
  }

  private static OpenAList.Document document(String name) {
    try {
      return new OpenAList.Document(name, Files.readAllBytes(DEMO.resolve(name)));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
