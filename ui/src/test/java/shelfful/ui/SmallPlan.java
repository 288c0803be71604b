package shelfful.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import shelfful.app.OpenAList;
import shelfful.app.Opened;
import shelfful.app.PlanALoad;
import shelfful.app.PlanListener;
import shelfful.app.SearchLength;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;

/** A short list in the studio of the demo, planned once for all tests: more vases than go in. */
public final class SmallPlan {
  private static final String LIST =
      "batch,form,glaze,quantity,stage\n"
          + "V01,tall-vase,clear-gloss,24,glazed\n"
          + "M01,mug,river-blue,6,glazed\n";

  private static final InspectedLoad LOAD = planned(request(LIST));

  private SmallPlan() {}

  public static InspectedLoad load() {
    return LOAD;
  }

  /** Ware of many sizes, of which some of each kind waits. */
  public static InspectedLoad mixed() {
    return planned(
        request(
            "batch,form,glaze,quantity,stage\n"
                + "V01,tall-vase,clear-gloss,3,glazed\n"
                + "M01,mug,river-blue,44,glazed\n"
                + "T01,teapot,clear-gloss,6,glazed\n"
                + "B01,bowl-large,clear-gloss,6,glazed\n"
                + "P01,dinner-plate,matt-black,8,glazed\n"));
  }

  /** A list of which everything goes in. */
  public static LoadRequest roomy() {
    return request("batch,form,glaze,quantity,stage\nM01,mug,river-blue,6,glazed\n");
  }

  public static InspectedLoad planned(LoadRequest request) {
    return new PlanALoad(request).run(SearchLength.ofSteps(0), PlanListener.none()).orElseThrow();
  }

  private static LoadRequest request(String list) {
    try {
      OpenAList.Document studio =
          new OpenAList.Document("studio.json", Files.readAllBytes(DemoStudio.FILE));
      OpenAList.Document document =
          new OpenAList.Document("list.csv", list.getBytes(StandardCharsets.UTF_8));
      return ((Opened.Ready<LoadRequest>)
              OpenAList.open(studio, document, LocalDate.of(2026, 6, 1)))
          .value();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
