package shelfful.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import shelfful.files.AtomicSave;
import shelfful.files.PlanWriter;
import shelfful.files.SaveFailed;
import shelfful.inspect.InspectedLoad;

/** The files of one plan: the plan itself, its sheets and its phone page, named after the list. */
final class PlanFiles {
  private final Path folder;
  private final Path plan;
  private final Path sheets;
  private final Path phone;
  private final SheetOptions options;
  private byte[] planBytes = {};

  PlanFiles(Path folder, Path listFile, SheetOptions options) {
    String name = listFile.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    this.folder = folder;
    this.plan = folder.resolve(name + ".plan.json");
    this.sheets = folder.resolve(name + ".pdf");
    this.phone = folder.resolve(name + ".html");
    this.options = options;
  }

  /** A file beside a plan, named after it: its name without {@code .plan.json}, and an ending. */
  static Path beside(Path plan, String ending) {
    String name = plan.getFileName().toString().replaceFirst("(\\.plan)?\\.json$", "");
    return plan.resolveSibling(name + ending);
  }

  void save(InspectedLoad load) throws SaveFailed, IOException {
    Files.createDirectories(folder);
    planBytes = PlanWriter.bytes(load);
    AtomicSave.save(plan, planBytes);
    AtomicSave.save(sheets, options.pdf(load));
    AtomicSave.save(phone, options.phone(load));
  }

  Path plan() {
    return plan;
  }

  Path sheets() {
    return sheets;
  }

  Path phone() {
    return phone;
  }

  byte[] planBytes() {
    return planBytes.clone();
  }
}
