package shelfful.ui.desk;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.app.Opened;
import shelfful.app.RecoveryFolder;
import shelfful.app.SaveALoad;
import shelfful.app.WorkFile;
import shelfful.drawing.LoadDrawing;
import shelfful.edit.Difference;
import shelfful.edit.WorkPlan;
import shelfful.inspect.Finding;
import shelfful.inspect.InspectedLoad;
import shelfful.ui.words.Words;

/** Saving work, plans and sheets, and what an earlier run of the program left unsaved. */
final class Saving {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  private final Words words;
  private final DeskViewModel desk;
  private final Places places;

  Saving(Words words, DeskViewModel desk, Places places) {
    this.words = words;
    this.desk = desk;
    this.places = places;
  }

  /** Saves the work in its file, or asks for one. */
  void save() {
    desk.settle();
    if (desk.work().plan().get().isPresent()) {
      desk.work()
          .file()
          .or(() -> places.forWork().map(WorkFile::at))
          .ifPresent(file -> tell(desk.work().save(file), file));
    }
  }

  /** The plan on the desk, to be asked about before it is left behind. */
  Leaving.Document document() {
    return new Leaving.Document(
        words.of("leave.plan"),
        desk.work().unsaved()::get,
        () -> {
          save();
          return !desk.work().unsaved().get();
        },
        desk.work()::drop);
  }

  /** Saves the work in another file, which it then belongs to. */
  void saveAs() {
    desk.settle();
    if (desk.work().plan().get().isPresent()) {
      places.forWork().map(WorkFile::at).ifPresent(file -> tell(desk.work().save(file), file));
    }
  }

  private void tell(WorkFile.Saved outcome, WorkFile file) {
    String name = String.valueOf(file.path().getFileName());
    if (outcome instanceof WorkFile.Saved.Done) {
      desk.say(words.of("state.saved", name));
    } else if (outcome instanceof WorkFile.Saved.Failed failed) {
      desk.tell(new Notice(words.of("notice.notSaved"), List.of(failed.sentence())));
    } else {
      WorkFile other = file.another();
      String otherName = String.valueOf(other.path().getFileName());
      desk.tell(
          new Notice(
              words.of("notice.changedElsewhere", name),
              List.of(words.of("notice.changedElsewhereMore")),
              List.of(
                  new Notice.Choice(
                      words.of("choice.keepBoth", otherName),
                      () -> tell(desk.work().save(other), other)),
                  new Notice.Choice(
                      words.of("choice.replace", name),
                      () -> tell(desk.work().saveAllTheSame(file), file)))));
    }
  }

  /** Saves the plan for the command line and for others; refused while it breaks rules. */
  void savePlan() {
    desk.settle();
    flawless()
        .ifPresent(
            load -> places.forPlan().ifPresent(file -> told(SaveALoad.plan(load, file), file)));
  }

  /** Saves the sheets as PDF and shows them with the system's viewer, to be printed from there. */
  void print() {
    desk.settle();
    flawless()
        .ifPresent(
            load ->
                places
                    .forSheets()
                    .ifPresent(
                        file -> {
                          Optional<String> trouble = SaveALoad.sheets(drawing(load), file);
                          told(trouble, file);
                          if (trouble.isEmpty()) {
                            places.show(file);
                          }
                        }));
  }

  /** The sheets just as they are printed; empty, with the reasons told, while rules are broken. */
  Optional<LoadDrawing> preview() {
    desk.settle();
    return flawless().map(this::drawing);
  }

  /** On the paper and in the unit that the desk is set to. */
  private LoadDrawing drawing(InspectedLoad load) {
    return LoadDrawing.of(load, desk.shown().get().orElseThrow().printing());
  }

  private Optional<InspectedLoad> flawless() {
    Optional<ShownLoad> shown = desk.shown().get();
    Optional<InspectedLoad> load = shown.flatMap(ShownLoad::inspected);
    if (shown.isPresent() && load.isEmpty()) {
      desk.tell(
          new Notice(
              words.of("notice.faultsFirst"),
              shown.get().judged().faults().stream().map(Finding::sentence).toList()));
    }
    return load;
  }

  private void told(Optional<String> trouble, Path file) {
    trouble.ifPresentOrElse(
        sentence -> desk.tell(new Notice(words.of("notice.notSaved"), List.of(sentence))),
        () -> desk.say(words.of("state.savedCopy", String.valueOf(file.getFileName()))));
  }

  /**
   * Offers what was left unsaved, the latest first; nothing is deleted before it is answered.
   *
   * @param then is done when there is nothing more to offer
   */
  void offer(RecoveryFolder recovery, Runnable then) {
    recovery.left().stream().findFirst().ifPresentOrElse(left -> offer(recovery, left, then), then);
  }

  /** When something was kept, as it is told. */
  static String time(Instant kept) {
    return TIME.format(kept.atZone(ZoneId.systemDefault()));
  }

  private void offer(RecoveryFolder recovery, RecoveryFolder.Left left, Runnable then) {
    desk.tell(
        new Notice(
            words.of("notice.left", time(left.saved())),
            List.of(difference(left)),
            List.of(
                new Notice.Choice(
                    words.of("choice.recover"),
                    () -> {
                      desk.recover(left);
                      recovery.settle(left);
                      offer(recovery, then);
                    }),
                new Notice.Choice(
                    words.of("choice.throwAway"),
                    () -> {
                      recovery.settle(left);
                      offer(recovery, then);
                    }))));
  }

  private String difference(RecoveryFolder.Left left) {
    int placed = left.plan().load().placed();
    Optional<WorkPlan> saved = left.of().flatMap(Saving::read);
    if (saved.isEmpty()) {
      return words.of("left.new", placed, left.plan().pinned().size());
    }
    Difference than = Difference.between(saved.get(), left.plan());
    String name = String.valueOf(left.of().orElseThrow().getFileName());
    return words.of("left.changed", name, than.moved(), than.putIn(), than.takenOut(), than.held());
  }

  private static Optional<WorkPlan> read(Path file) {
    return WorkFile.open(file) instanceof Opened.Ready<WorkFile.OpenWork> ready
        ? Optional.of(ready.value().plan())
        : Optional.empty();
  }
}
