package shelfful.ui.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shelfful.app.KeepAWeek;
import shelfful.app.Opened;
import shelfful.drawing.PaperSize;
import shelfful.drawing.Printing;
import shelfful.measure.LengthUnit;
import shelfful.ui.task.QueuedTaskRunner;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.words.Words;

class WeekFileViewModelTest {
  private final SameThreadTaskRunner tasks = new SameThreadTaskRunner();
  private final WeekViewModel model = new WeekViewModel(Words.english(), tasks, Optional.empty());
  private final WeekFileViewModel files =
      new WeekFileViewModel(
          Words.english(),
          tasks,
          model,
          () -> Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES));

  @TempDir private Path folder;

  @Test
  void aSavedWeekIsOpenedAsItWas() {
    model.begin(SmallWeek.planned());
    assertThat(files.unsaved().get()).isTrue();
    Path file = folder.resolve("two.week.json");
    files.save(file);
    assertThat(files.unsaved().get()).isFalse();
    assertThat(model.notice().get()).startsWith("Saved");
    files.open(file);
    assertThat(model.plan().orElseThrow().firings())
        .isEqualTo(SmallWeek.planned().plan().firings());
    assertThat(files.unsaved().get()).isFalse();
    model.freezeOrRelease();
    assertThat(files.unsaved().get()).isTrue();
    model.undo();
    assertThat(files.unsaved().get()).isFalse();
  }

  @Test
  void beforeItIsLeftBehindAWeekIsSavedBeforeTheAnswerComes() {
    model.begin(SmallWeek.planned());
    assertThat(files.saveNow(folder.resolve("no such folder").resolve("a.week.json"))).isFalse();
    assertThat(model.notice().get()).contains("was not saved");
    assertThat(files.unsaved().get()).isTrue();
    assertThat(files.saveNow(folder.resolve("a.week.json"))).isTrue();
    assertThat(files.file()).contains(folder.resolve("a.week.json"));
    assertThat(KeepAWeek.open(folder.resolve("a.week.json"))).isInstanceOf(Opened.Ready.class);
  }

  @Test
  void whatCannotBeOpenedChangesNothingAndSaysWhy() throws IOException {
    model.begin(SmallWeek.planned());
    Path file = Files.writeString(folder.resolve("bad.json"), "{\"format\": \"a letter\"}");
    files.open(file);
    assertThat(model.week()).containsSame(SmallWeek.planned());
    assertThat(model.notice().get()).contains("bad.json");
  }

  @Test
  void theCalendarFileHasAnEventForEveryFiring() throws IOException {
    model.begin(SmallWeek.planned());
    Path file = folder.resolve("two.ics");
    files.saveCalendar(file);
    String text = Files.readString(file, StandardCharsets.UTF_8);
    assertThat(text).startsWith("BEGIN:VCALENDAR");
    assertThat(text.split("-firing@", -1)).hasSize(SmallWeek.planned().plan().firings().size() + 1);
  }

  @Test
  void everyFiringHasItsSheets() throws IOException {
    model.begin(SmallWeek.planned());
    files.saveAllSheets(folder);
    for (var firing : SmallWeek.planned().plan().firings()) {
      Path file = folder.resolve("week-" + firing.id() + ".pdf");
      if (firing.load().isPresent()) {
        assertThat(Files.readAllBytes(file)).startsWith("%PDF".getBytes(StandardCharsets.UTF_8));
      }
    }
    Path one = folder.resolve("one.pdf");
    files.saveSheets(one);
    assertThat(one).exists();
  }

  @Test
  void theSheetsAreOfTheFiringThatWasChosenWhenTheyWereAskedFor() throws IOException {
    QueuedTaskRunner queue = new QueuedTaskRunner();
    Printing printing = Printing.plain(PaperSize.A4, LengthUnit.MILLIMETRES);
    WeekFileViewModel asked = new WeekFileViewModel(Words.english(), queue, model, () -> printing);
    model.begin(SmallWeek.planned());
    List<String> loaded =
        SmallWeek.planned().plan().firings().stream()
            .map(firing -> firing.id())
            .filter(id -> SmallWeek.planned().load(id).isPresent())
            .toList();
    model.choose(loaded.get(0));
    files.saveSheets(folder.resolve("wanted.pdf"));
    asked.saveSheets(folder.resolve("got.pdf"));
    model.choose(loaded.get(1));
    queue.doWork();
    assertThat(folder.resolve("got.pdf")).hasSameBinaryContentAs(folder.resolve("wanted.pdf"));
  }
}
