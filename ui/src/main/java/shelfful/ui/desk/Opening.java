package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.Optional;
import shelfful.app.Opened;
import shelfful.app.WorkFile;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/** Opening files and the demo: read and drawn away from the screen's thread, then shown. */
record Opening(DeskViewModel desk, Words words, TaskRunner tasks) {

  private record Drawn(ShownLoad shown, Optional<WorkFile> file) {}

  /** Opens a plan or work file. */
  void open(Path file) {
    String name = String.valueOf(file.getFileName());
    String before = desk.state().get();
    desk.messages().sayForNow(words.of("state.opening", name));
    tasks.start(
        () -> drawn(WorkFile.open(file)),
        opened -> {
          desk.messages().sayForNow(before);
          take(opened)
              .ifPresent(one -> desk.begin(one.shown(), one.file(), words.of("state.from", name)));
        },
        fault -> {
          desk.messages().sayForNow(before);
          desk.messages().failed(fault);
        });
  }

  private Opened<Drawn> drawn(Opened<WorkFile.OpenWork> opened) {
    if (opened instanceof Opened.Ready<WorkFile.OpenWork> good) {
      WorkFile.OpenWork one = good.value();
      ShownLoad load = desk.drawn(one.plan(), one.judged());
      return new Opened.Ready<>(new Drawn(load, one.file()), good.notes());
    }
    Opened.Refused<WorkFile.OpenWork> bad = (Opened.Refused<WorkFile.OpenWork>) opened;
    return new Opened.Refused<>(bad.breaksRules(), bad.sentences());
  }

  /** Plans the demo. */
  void demo() {
    tasks.start(
        Demo::request, opened -> take(opened).ifPresent(desk::plan), desk.messages()::failed);
  }

  /** Shows a load that is at hand. */
  void load(InspectedLoad load, String from) {
    tasks.start(
        () -> desk.drawn(WorkPlan.of(load.load()), load),
        shown -> desk.begin(shown, Optional.empty(), from),
        desk.messages()::failed);
  }

  private <T> Optional<T> take(Opened<T> opened) {
    if (opened instanceof Opened.Ready<T> good) {
      if (!good.notes().isEmpty()) {
        desk.tell(new Notice(words.of("notice.notes"), good.notes()));
      }
      return Optional.of(good.value());
    }
    Opened.Refused<T> refused = (Opened.Refused<T>) opened;
    String key = refused.breaksRules() ? "notice.breaks" : "notice.unreadable";
    desk.tell(new Notice(words.of(key), refused.sentences()));
    return Optional.empty();
  }
}
