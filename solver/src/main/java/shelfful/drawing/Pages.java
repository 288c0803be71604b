package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sheets of a drawing in the order they are opened; numbered when all are known. */
final class Pages {
  private final PaperSize paper;
  private final List<SheetDraft> drafts = new ArrayList<>();

  Pages(PaperSize paper) {
    this.paper = paper;
  }

  SheetDraft open(Optional<String> layerId) {
    SheetDraft draft = new SheetDraft(paper, layerId);
    drafts.add(draft);
    return draft;
  }

  List<Sheet> finish(String about) {
    List<Sheet> sheets = new ArrayList<>();
    for (SheetDraft draft : drafts) {
      sheets.add(draft.finish(about, sheets.size() + 1, drafts.size()));
    }
    return List.copyOf(sheets);
  }
}
