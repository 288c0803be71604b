package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.OpenAPlan;
import shelfful.app.Opened;
import shelfful.app.SearchLength;
import shelfful.drawing.LayerList;
import shelfful.drawing.Spot;
import shelfful.inspect.InspectedLoad;
import shelfful.load.LoadRequest;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/**
 * What the desk shows and what can be done with it, without any widget. Used on the screen's thread
 * alone.
 */
public final class DeskViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final SearchLength length;
  private final ReadOnlyObjectWrapper<Optional<ShownLoad>> shown =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper layerId = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper pieceId = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper state = new ReadOnlyStringWrapper();
  private final ReadOnlyBooleanWrapper planning = new ReadOnlyBooleanWrapper();
  private final ReadOnlyObjectWrapper<Optional<Notice>> notice =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Optional<LivePlanning> live = Optional.empty();

  /** Read where loads are drawn, away from the screen. */
  private volatile Sight sight = Sight.USUAL;

  /**
   * Shows nothing yet.
   *
   * @param length of the demo's planning
   */
  public DeskViewModel(Words words, TaskRunner tasks, SearchLength length) {
    this.words = words;
    this.tasks = tasks;
    this.length = length;
    state.set(words.of("state.empty"));
  }

  /** Something the user must know, until it is closed. */
  record Notice(String heading, List<String> sentences) {}

  /** The load on the screen; empty before the first. */
  ReadOnlyObjectProperty<Optional<ShownLoad>> shown() {
    return shown.getReadOnlyProperty();
  }

  /** The chosen layer's id; empty text without a load. */
  public ReadOnlyStringProperty layerId() {
    return layerId.getReadOnlyProperty();
  }

  /** The chosen piece's id; empty text when none is. */
  public ReadOnlyStringProperty pieceId() {
    return pieceId.getReadOnlyProperty();
  }

  /** How things stand, in a line. */
  public ReadOnlyStringProperty state() {
    return state.getReadOnlyProperty();
  }

  /** Whether a planning goes on. */
  public ReadOnlyBooleanProperty planning() {
    return planning.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<Notice>> notice() {
    return notice.getReadOnlyProperty();
  }

  /** Opens a plan file in place of what is shown; what is refused changes nothing. */
  public void open(Path file) {
    leave();
    String name = String.valueOf(file.getFileName());
    String before = state.get();
    state.set(words.of("state.opening", name));
    tasks.start(
        () -> drawn(OpenAPlan.open(file)),
        opened -> {
          state.set(before);
          take(opened)
              .ifPresent(
                  load -> {
                    show(load);
                    state.set(told("state.opened", name));
                  });
        },
        fault -> {
          state.set(before);
          failed(fault);
        });
  }

  private Opened<ShownLoad> drawn(Opened<InspectedLoad> opened) {
    if (opened instanceof Opened.Ready<InspectedLoad> ready) {
      return new Opened.Ready<>(draw(ready.value()), ready.notes());
    }
    Opened.Refused<InspectedLoad> refused = (Opened.Refused<InspectedLoad>) opened;
    return new Opened.Refused<>(refused.breaksRules(), refused.sentences());
  }

  /** Plans the demo for everybody to see. */
  public void tryTheDemo() {
    leave();
    tasks.start(Demo::request, opened -> take(opened).ifPresent(this::plan), this::failed);
  }

  /** Plans what somebody asks for, for everybody to see. */
  public void planThis(LoadRequest request) {
    leave();
    plan(request);
  }

  /** Shows loads in another way from now on, the one on the screen among them. */
  void see(Sight other) {
    sight = other;
    shown
        .get()
        .ifPresent(
            load ->
                tasks.start(
                    () -> draw(load.load()),
                    drawn -> {
                      if (shown.get().filter(now -> now == load).isPresent()) {
                        show(drawn);
                      }
                    },
                    this::failed));
  }

  private ShownLoad draw(InspectedLoad load) {
    return ShownLoad.of(load, sight);
  }

  private void plan(LoadRequest request) {
    LivePlanning started = new LivePlanning(request, tasks, new Watching(), this::draw);
    live = Optional.of(started);
    planning.set(true);
    state.set(words.of("state.planning"));
    started.start(length);
  }

  /** Ends the planning, if any; the best load stays. */
  public void stop() {
    live.ifPresent(
        one -> {
          state.set(words.of("state.stopping"));
          one.stop();
        });
  }

  /** What was begun before is no longer listened to. */
  private void leave() {
    live.ifPresent(LivePlanning::stop);
    live = Optional.empty();
    planning.set(false);
    closeNotice();
  }

  /** Chooses a layer; one that the load does not have is passed over. */
  public void chooseLayer(String id) {
    if (!id.equals(layerId.get()) && shown.get().flatMap(load -> load.layer(id)).isPresent()) {
      pieceId.set("");
      layerId.set(id);
    }
  }

  /** Chooses the layer that is loaded so many layers later; stops at the first and the last. */
  public void chooseLayerAfter(int steps) {
    shown
        .get()
        .ifPresent(
            load -> {
              List<String> ids = load.lists().layers().stream().map(LayerList::layerId).toList();
              int wanted = ids.indexOf(layerId.get()) + steps;
              if (wanted >= 0 && wanted < ids.size()) {
                chooseLayer(ids.get(wanted));
              }
            });
  }

  /** Chooses a piece of the chosen layer, or none with empty text. */
  public void choosePiece(String id) {
    pieceId.set(id);
  }

  /** Chooses the piece that covers a spot on the chosen layer's sheet, or none. */
  void choosePieceAt(Spot spot) {
    choosePiece(shown.get().flatMap(load -> load.pieceAt(layerId.get(), spot)).orElse(""));
  }

  /** Takes the message away. */
  public void closeNotice() {
    notice.set(Optional.empty());
  }

  private <T> Optional<T> take(Opened<T> opened) {
    if (opened instanceof Opened.Ready<T> ready) {
      if (!ready.notes().isEmpty()) {
        tell("notice.notes", ready.notes());
      }
      return Optional.of(ready.value());
    }
    Opened.Refused<T> refused = (Opened.Refused<T>) opened;
    tell(refused.breaksRules() ? "notice.breaks" : "notice.unreadable", refused.sentences());
    return Optional.empty();
  }

  private void tell(String key, List<String> sentences) {
    notice.set(Optional.of(new Notice(words.of(key), sentences)));
  }

  private void failed(Throwable fault) {
    notice.set(Optional.of(new Notice(words.of("notice.fault", fault), List.of())));
  }

  /** Another load; the chosen layer and piece stay chosen where it has them. */
  private void show(ShownLoad load) {
    String layer =
        load.layer(layerId.get())
            .or(() -> load.lists().layers().stream().findFirst())
            .map(LayerList::layerId)
            .orElse("");
    String piece = load.ring(layer, pieceId.get()).isPresent() ? pieceId.get() : "";
    layerId.set(layer);
    shown.set(Optional.of(load));
    pieceId.set(piece);
  }

  private String told(String key, String last) {
    return shown
        .get()
        .map(load -> words.of(key, load.lists().counts(), load.lists().layers().size(), last))
        .orElse("");
  }

  /** Listens to the planning that was started last, and to no other. */
  private final class Watching implements LivePlanning.Watcher {

    private boolean isPast(LivePlanning planning) {
      return live.filter(one -> one == planning).isEmpty();
    }

    @Override
    public void better(LivePlanning from, ShownLoad load) {
      if (!isPast(from)) {
        show(load);
        state.set(told("state.better", ""));
      }
    }

    @Override
    public void refused(LivePlanning from) {
      if (!isPast(from)) {
        tell("notice.dropped", List.of());
      }
    }

    @Override
    public void ended(LivePlanning from, Optional<ShownLoad> best) {
      if (!isPast(from)) {
        leaveDone();
        best.ifPresentOrElse(DeskViewModel.this::show, () -> tell("notice.none", List.of()));
        state.set(best.isPresent() ? told("state.planned", "") : words.of("state.empty"));
      }
    }

    @Override
    public void failed(LivePlanning from, Throwable fault) {
      if (!isPast(from)) {
        leaveDone();
        DeskViewModel.this.failed(fault);
        state.set(shown.get().isPresent() ? told("state.planned", "") : words.of("state.empty"));
      }
    }

    private void leaveDone() {
      live = Optional.empty();
      planning.set(false);
    }
  }
}
