package shelfful.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.calendar.WeekCalendar;
import shelfful.files.AtomicSave;
import shelfful.files.SaveFailed;
import shelfful.files.WeekWriter;
import shelfful.inspect.InspectedLoad;
import shelfful.review.InspectedWeek;
import shelfful.week.PlannedFiring;

/** The files of one week, named after the file of what was asked. */
final class WeekFiles {
  private final Path folder;
  private final String name;
  private final List<Path> saved = new ArrayList<>();
  private byte[] planBytes = {};

  WeekFiles(Path folder, Path weekFile) {
    this.folder = folder;
    this.name = weekFile.getFileName().toString().replaceFirst("(\\.week)?\\.json$", "");
  }

  void plan(InspectedWeek week) throws SaveFailed, IOException {
    planBytes = WeekWriter.bytes(week);
    save(name + ".week.json", planBytes);
  }

  /** The plan as it was saved. */
  byte[] planBytes() {
    return planBytes.clone();
  }

  void calendar(InspectedWeek week) throws SaveFailed, IOException {
    save(name + ".ics", WeekCalendar.bytes(week, Instant.now()));
  }

  void sheets(InspectedWeek week, SheetOptions options) throws SaveFailed, IOException {
    for (PlannedFiring firing : week.plan().firings()) {
      Optional<InspectedLoad> load = week.load(firing.id());
      if (load.isPresent()) {
        save(name + "-" + firing.id() + ".pdf", options.pdf(load.get()));
      }
    }
  }

  private void save(String file, byte[] bytes) throws SaveFailed, IOException {
    Files.createDirectories(folder);
    Path path = folder.resolve(file);
    AtomicSave.save(path, bytes);
    saved.add(path);
  }

  List<Path> saved() {
    return List.copyOf(saved);
  }
}
