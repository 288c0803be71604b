package shelfful.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import shelfful.app.ChangedList;
import shelfful.app.FillUp;
import shelfful.app.PlanALoad;
import shelfful.app.PlanAround;
import shelfful.app.Planning;
import shelfful.app.SearchLength;
import shelfful.edit.Edit;
import shelfful.edit.WorkPlan;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/** Planning that is watched on the desk. What it ends with is one step of the history. */
final class PlanningViewModel {
  private final DeskViewModel desk;
  private final Words words;
  private final TaskRunner tasks;
  private final SearchLength length;
  private final ReadOnlyBooleanWrapper goesOn = new ReadOnlyBooleanWrapper();
  private Optional<LivePlanning> live = Optional.empty();
  private Optional<WorkPlan> kept = Optional.empty();
  private boolean again;

  PlanningViewModel(DeskViewModel desk, Words words, TaskRunner tasks, SearchLength length) {
    this.desk = desk;
    this.words = words;
    this.tasks = tasks;
    this.length = length;
  }

  ReadOnlyBooleanProperty goesOn() {
    return goesOn.getReadOnlyProperty();
  }

  /** Plans something new. */
  void start(LoadRequest request) {
    again = false;
    start(new PlanALoad(request), WorkPlan::of);
  }

  /** Plans what is on the desk again, around its pins and locks. */
  void startAgain() {
    onDesk(PlanAround::again, Optional.empty());
  }

  /** Puts what waits into free places of what is on the desk, and moves nothing. */
  void startFillingUp() {
    onDesk(FillUp::new, Optional.empty());
  }

  /** Plans what is on the desk again for a list that was changed, moving little. */
  void startChanged(LoadRequest request) {
    desk.work()
        .plan()
        .get()
        .map(plan -> new ChangedList(plan, request))
        .ifPresent(change -> onDesk(plan -> change, Optional.of(change.carried())));
  }

  private void onDesk(Function<WorkPlan, Planning> way, Optional<WorkPlan> keeping) {
    Optional<WorkPlan> plan = desk.work().plan().get();
    if (plan.isPresent()) {
      again = true;
      kept = keeping.or(() -> plan);
      start(way.apply(plan.get()), load -> new Edit.AdoptPlan(load).on(plan.get()));
    }
  }

  private void start(Planning way, Function<Load, WorkPlan> onDesk) {
    LivePlanning started =
        new LivePlanning(
            way, tasks, new Watching(), load -> desk.drawn(onDesk.apply(load.load()), load));
    live = Optional.of(started);
    goesOn.set(true);
    desk.say(words.of("state.planning"));
    started.start(length);
  }

  void stop() {
    live.ifPresent(
        one -> {
          desk.say(words.of("state.stopping"));
          one.stop();
        });
  }

  /** What was begun is no longer listened to. */
  void leave() {
    live.ifPresent(LivePlanning::stop);
    done();
  }

  /** Ends now, with what is on the screen. */
  void settle() {
    if (live.isPresent()) {
      leave();
      desk.shown().get().ifPresent(this::adopt);
      desk.say(words.of("state.settled"));
    }
  }

  private void done() {
    live = Optional.empty();
    goesOn.set(false);
  }

  private void adopt(ShownLoad best) {
    desk.makeReady(best);
    Load load = best.judged().load();
    Optional<WorkPlan> before = desk.work().plan().get().filter(plan -> again);
    if (before.isEmpty()) {
      desk.work().begin(best.plan(), Optional.empty());
    } else if (before.get().load().equals(load)) {
      desk.work().showAgain();
    } else if (PlanAround.keeps(kept.orElseThrow(), load)) {
      desk.work().apply(new Edit.AdoptPlan(load));
    } else {
      desk.tell(new Notice(words.of("notice.pinsMoved"), List.of()));
      desk.work().showAgain();
    }
  }

  /** Listens to the planning that was started last, and to no other. */
  private final class Watching implements LivePlanning.Watcher {

    private boolean isPast(LivePlanning planning) {
      return live.filter(one -> one == planning).isEmpty();
    }

    @Override
    public void better(LivePlanning from, ShownLoad load) {
      if (!isPast(from)) {
        desk.show(load);
        desk.say(words.of("state.better"));
      }
    }

    @Override
    public void refused(LivePlanning from) {
      if (!isPast(from)) {
        desk.tell(new Notice(words.of("notice.dropped"), List.of()));
      }
    }

    @Override
    public void ended(LivePlanning from, Optional<ShownLoad> best) {
      if (!isPast(from)) {
        done();
        best.ifPresentOrElse(
            PlanningViewModel.this::adopt,
            () ->
                desk.tell(
                    new Notice(words.of(again ? "notice.noneAgain" : "notice.none"), List.of())));
        desk.say(words.of(ending(from, best.isPresent())));
      }
    }

    private String ending(LivePlanning from, boolean planned) {
      if (!planned && desk.shown().get().isEmpty()) {
        return "state.empty";
      }
      return from.hasGivenUp() ? "state.gaveUp" : "state.planned";
    }

    @Override
    public void failed(LivePlanning from, Throwable fault) {
      if (!isPast(from)) {
        done();
        desk.messages().failed(fault);
        boolean something = desk.shown().get().isPresent();
        desk.say(words.of(something ? "state.planned" : "state.empty"));
      }
    }
  }
}
