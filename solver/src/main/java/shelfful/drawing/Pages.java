package shelfful.drawing;

import java.util.ArrayList;
import java.util.List;

/** The sheets of a drawing in the order they are opened; numbered when all are known. */
final class Pages {
  private final SheetFormat format;
  private final List<SheetDraft> drafts = new ArrayList<>();

  Pages(SheetFormat format) {
    this.format = format;
  }

  SheetFormat format() {
    return format;
  }

  /** Opens a sheet about the whole load. */
  SheetDraft open() {
    return open(List.of());
  }

  /** Opens a sheet about one layer, or several that are alike. */
  SheetDraft open(List<String> layerIds) {
    SheetDraft draft = new SheetDraft(format, layerIds);
    drafts.add(draft);
    return draft;
  }

  /** The number of the page opened last. */
  int count() {
    return drafts.size();
  }

  List<Sheet> finish(String about, String edition) {
    List<Sheet> sheets = new ArrayList<>();
    for (SheetDraft draft : drafts) {
      sheets.add(draft.finish(about, edition, sheets.size() + 1, drafts.size()));
    }
    return List.copyOf(sheets);
  }
}
