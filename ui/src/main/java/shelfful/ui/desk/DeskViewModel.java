package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import shelfful.app.ChangedList;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.app.WorkFile;
import shelfful.edit.WorkPlan;
import shelfful.inspect.InspectedLoad;
import shelfful.inspect.JudgedLoad;
import shelfful.load.LoadRequest;
import shelfful.ui.hand.EditWords;
import shelfful.ui.hand.HandCommands;
import shelfful.ui.hand.HandViewModel;
import shelfful.ui.steps.Steps;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;
import shelfful.ui.work.WorkViewModel;

/**
 * What the desk shows and what can be done with it, without any widget. Used on the screen's thread
 * alone.
 */
public final class DeskViewModel {
  private final Words words;
  private final TaskRunner tasks;
  private final Steps steps = new Steps();
  private final WorkViewModel work;
  private final HandViewModel hand;
  private final HandCommands commands;
  private final PlanningViewModel planning;
  private final MostThatFits most;
  private final Rehearsals rehearsals;
  private final Opening opening;
  private final Drawings drawings;
  private final ReadOnlyObjectWrapper<Optional<ShownLoad>> shown =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final Chosen chosen;
  private final DeskMessages messages;

  /**
   * Shows nothing yet.
   *
   * @param length of each planning
   * @param recovery where unsaved work is kept
   */
  public DeskViewModel(
      Words words, TaskRunner tasks, SearchLength length, RecoveryFolder recovery) {
    this.words = words;
    this.tasks = tasks;
    this.messages = new DeskMessages(words);
    this.work = new WorkViewModel(tasks, recovery, steps, new EditWords(words)::of);
    this.hand = new HandViewModel(words, work, new DeskSpeech(shown));
    this.chosen = new Chosen(shown::get, hand);
    this.commands = new HandCommands(words, work, hand);
    this.planning = new PlanningViewModel(this, words, tasks, length);
    this.most = new MostThatFits(tasks, this::say);
    this.rehearsals = new Rehearsals(tasks, messages::failed);
    this.opening = new Opening(this, words, tasks);
    this.drawings = new Drawings(tasks, this::show, messages::failed);
    steps.beforeTurning(
        () -> {
          planning.settle();
          hand.putBack();
        });
    work.plan().addListener((property, was, is) -> is.ifPresent(drawings::draw));
    work.onTrouble(sentence -> tell(new Notice(words.of("notice.notKept"), List.of(sentence))));
  }

  /** The plan on the screen; empty before the first. */
  ReadOnlyObjectProperty<Optional<ShownLoad>> shown() {
    return shown.getReadOnlyProperty();
  }

  /** The chosen layer's id; empty text without a load. */
  public ReadOnlyStringProperty layerId() {
    return chosen.layerId();
  }

  /** The chosen piece's id, standing or waiting; empty text when none is. */
  public ReadOnlyStringProperty pieceId() {
    return chosen.pieceId();
  }

  /** How things stand, in a line. */
  public ReadOnlyStringProperty state() {
    return messages.state();
  }

  /** Whether a planning goes on. */
  public ReadOnlyBooleanProperty planning() {
    return planning.goesOn();
  }

  /** What the desk says. */
  DeskMessages messages() {
    return messages;
  }

  /** Everything done here, in the studio and in the list, in one order. */
  public Steps steps() {
    return steps;
  }

  /** The plan with its history and its file. */
  public WorkViewModel work() {
    return work;
  }

  /** The piece in the hand. */
  public HandViewModel hand() {
    return hand;
  }

  /** What is done by hand at once. */
  public HandCommands commands() {
    return commands;
  }

  /** Opens a plan or work file in place of what is shown; what is refused changes nothing. */
  public void open(Path file) {
    leave();
    opening.open(file);
  }

  /** Puts a plan on the desk just as a file holds it. */
  void begin(ShownLoad drawn, Optional<WorkFile> file, String from) {
    messages.endWith(from);
    makeReady(drawn);
    work.beginSaved(drawn.plan(), file);
  }

  /** Puts a load on the desk that was planned and inspected elsewhere. */
  public void lookAt(InspectedLoad load, String from) {
    leave();
    opening.load(load, from);
  }

  /** Puts work on the desk that an earlier run of the program left behind, unsaved. */
  void recover(RecoveryFolder.Left left) {
    leave();
    messages.endWith(words.of("state.recovered"));
    work.begin(left.plan(), left.of().map(WorkFile::at));
  }

  /** Plans the demo for everybody to see. */
  public void tryTheDemo() {
    leave();
    opening.demo();
  }

  /** Makes ready for the first plan, while nobody waits for anything yet. */
  void rehearse(Consumer<ShownLoad> unseen) {
    rehearsals.start(unseen);
  }

  /** Plans something new, in place of what is on the desk. */
  public void plan(LoadRequest request) {
    leave();
    planning.start(request);
  }

  /** Who works out how many pieces any setting of a request can hold; away from the screen. */
  public void boundedBy(Function<LoadRequest, OptionalInt> other) {
    most.boundedBy(other);
  }

  /** The most that a setting of what is shown can hold; empty while that is not known. */
  OptionalInt most() {
    return shown
        .get()
        .map(load -> most.of(load.judged().load().request()))
        .orElse(OptionalInt.empty());
  }

  /** Whether a request is for most of what stands on the desk, so that it is the same work. */
  boolean isOnDesk(LoadRequest request) {
    return work.plan().get().filter(plan -> ChangedList.isOf(plan, request)).isPresent();
  }

  /** Plans a list that was changed: what stands and is still on it moves as little as can be. */
  void planChanged(LoadRequest request) {
    settle();
    closeNotice();
    planning.startChanged(request);
  }

  /** Plans again around everything pinned and locked. */
  public void planAgain() {
    settle();
    closeNotice();
    planning.startAgain();
  }

  /** Puts what waits into free places, and moves nothing. */
  public void fillUp() {
    settle();
    closeNotice();
    planning.startFillingUp();
  }

  /** Ends the planning, if any; the best load stays. */
  public void stop() {
    planning.stop();
  }

  /** Before something is done by hand: what planning has found so far comes onto the desk. */
  public void settle() {
    planning.settle();
    hand.setDown();
  }

  /** What was begun before is no longer listened to. */
  private void leave() {
    rehearsals.stop();
    planning.leave();
    hand.putBack();
    closeNotice();
  }

  /** Chooses a layer; one that the load does not have is passed over. */
  public void chooseLayer(String id) {
    chosen.layer(id);
  }

  /** Chooses the layer that is loaded so many layers later; stops at the first and the last. */
  public void chooseLayerAfter(int steps) {
    chosen.layerAfter(steps);
  }

  /** Chooses a piece, or none with empty text; one on another layer brings that layer with it. */
  public void choosePiece(String id) {
    chosen.piece(id);
  }

  /** Does a short step on the screen's thread after what it has to do already. */
  void later(Runnable step) {
    tasks.show(step);
  }

  /** Takes the message away. */
  public void closeNotice() {
    messages.close();
  }

  void tell(Notice other) {
    messages.tell(other);
  }

  /** What the line of state ends with from now on. */
  void say(String end) {
    messages.endWith(end);
    say();
  }

  private void say() {
    messages.say(shown.get(), most());
  }

  /** Shows loads in another way from now on, the one on the screen among them. */
  void see(Sight other) {
    drawings.see(other);
    shown.get().ifPresent(this::seeRight);
  }

  private void seeRight(ShownLoad load) {
    if (!drawings.isSeenRight(load)) {
      drawings.drawAgain(load, shown::get);
    }
  }

  /** Draws a plan that the judge has seen; away from the screen's thread. */
  ShownLoad drawn(WorkPlan plan, JudgedLoad judged) {
    return drawings.of(plan, judged);
  }

  /** A drawing that is at hand already, for when its plan comes onto the desk. */
  void makeReady(ShownLoad load) {
    drawings.makeReady(load);
  }

  /** Another load; the chosen layer and piece stay chosen where it has them. */
  void show(ShownLoad load) {
    chosen.beforeShowing(load);
    shown.set(Optional.of(load));
    chosen.onceShown(load);
    say();
    most.ask(load.judged().load().request());
    // The settings may have changed while it was drawn.
    seeRight(load);
  }
}
