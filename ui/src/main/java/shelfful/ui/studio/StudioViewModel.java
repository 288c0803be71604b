package shelfful.ui.studio;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import shelfful.app.KeepAStudio;
import shelfful.app.Opened;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;
import shelfful.ui.steps.Steps;
import shelfful.ui.words.Words;

/**
 * A studio being changed, page by page, without any widget. The studio held is always sound: a
 * change that its file could not be read back from is refused, with the reason.
 */
public final class StudioViewModel {
  private final Steps steps;
  private final ReadOnlyObjectWrapper<Manner> manner = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Studio> studio = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Studio> trial = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Section> section = new ReadOnlyObjectWrapper<>(Section.FORMS);
  private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper();
  private final ReadOnlyObjectWrapper<List<Group>> page = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper warnings = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
  private Optional<Path> file = Optional.empty();
  private Studio saved;

  /**
   * Shows a studio's first form.
   *
   * @param steps of the whole desk, among which every change is noted
   */
  public StudioViewModel(Manner manner, Studio studio, Steps steps) {
    this.steps = steps;
    this.manner.set(manner);
    this.saved = studio;
    show(studio);
  }

  /** The studio as it stands. */
  public ReadOnlyObjectProperty<Studio> studio() {
    return studio.getReadOnlyProperty();
  }

  /** The studio with what is being typed, as far as it can be read; drawings follow it. */
  public ReadOnlyObjectProperty<Studio> trial() {
    return trial.getReadOnlyProperty();
  }

  /** How values are shown and read. */
  public ReadOnlyObjectProperty<Manner> manner() {
    return manner.getReadOnlyProperty();
  }

  /** The part of the studio that is shown. */
  public ReadOnlyObjectProperty<Section> section() {
    return section.getReadOnlyProperty();
  }

  /** Which thing of the section is chosen, from 0. */
  public ReadOnlyIntegerProperty index() {
    return index.getReadOnlyProperty();
  }

  /** The page of the chosen thing. */
  public ReadOnlyObjectProperty<List<Group>> page() {
    return page.getReadOnlyProperty();
  }

  /** What the person must know, such as why something was not done; empty when there is nothing. */
  public ReadOnlyStringProperty message() {
    return message.getReadOnlyProperty();
  }

  /** What is odd about the studio but harmless, such as a column without enough posts in stock. */
  public ReadOnlyStringProperty warnings() {
    return warnings.getReadOnlyProperty();
  }

  /** Everything done at the desk, these changes among it. */
  public Steps steps() {
    return steps;
  }

  /** Whether there are changes that no file holds. */
  public ReadOnlyBooleanProperty unsaved() {
    return unsaved.getReadOnlyProperty();
  }

  /** The file it was opened from or saved to. */
  public Optional<Path> file() {
    return file;
  }

  /** What the things of the section are called. */
  public List<String> names() {
    return sections().names(studio.get(), section.get());
  }

  /** Whether things can be added to, copied within and removed from the section. */
  public boolean isList() {
    return sections().things(section.get()).isPresent();
  }

  private Sections sections() {
    return new Sections(new FieldMaker(manner.get()));
  }

  /** Shows and reads values in another manner; the studio stays as it is. */
  public void use(Manner other) {
    manner.set(other);
    refresh();
  }

  /** Shows another part of the studio, its first thing chosen. */
  public void choose(Section other) {
    section.set(other);
    choose(0);
  }

  /** Chooses a thing of the section. */
  public void choose(int other) {
    index.set(other);
    trial.set(studio.get());
    refresh();
  }

  /** Puts a studio in place of the one shown, as a history does; this is no edit. */
  public void show(Studio other) {
    studio.set(other);
    trial.set(other);
    unsaved.set(!other.equals(saved));
    warnings.set(StudioFaults.of(other));
    index.set(Math.max(0, Math.min(index.get(), names().size() - 1)));
    refresh();
  }

  private void refresh() {
    page.set(sections().page(studio.get(), section.get(), index.get()));
  }

  /** What a field would say to a text that is being typed; the drawing follows what it can. */
  public Optional<String> type(Field field, String text) {
    return attempt(field, text, trial::set);
  }

  /**
   * Takes what was typed into a field. A text that is what the field shows already changes nothing,
   * so that a rounded figure never replaces an exact one.
   *
   * @return why it was not taken; empty when it was
   */
  public Optional<String> commit(Field field, String text) {
    String name = words().of("edit.field", field.label(), thing());
    return attempt(field, text, after -> take(name, after));
  }

  private Optional<String> attempt(Field field, String text, Consumer<Studio> then) {
    if (field.shown().apply(studio.get()).equals(text)) {
      then.accept(studio.get());
      return Optional.empty();
    }
    TextReading<Studio> reading = field.put().apply(studio.get(), text);
    if (reading instanceof TextReading.Refused<Studio> refused) {
      return Optional.of((refused.wrong() + " " + refused.mend()).strip());
    }
    Studio after = reading.value().orElseThrow();
    Optional<String> fault = StudioFaults.added(studio.get(), after);
    if (fault.isEmpty()) {
      then.accept(after);
    }
    return fault;
  }

  private String thing() {
    List<String> names = names();
    return names.isEmpty() ? "" : names.get(Math.min(index.get(), names.size() - 1));
  }

  private Words words() {
    return manner.get().words();
  }

  private void take(String name, Studio after) {
    message.set("");
    if (after.equals(studio.get())) {
      return;
    }
    Studio before = studio.get();
    show(after);
    String told = words().of("edit.inStudio", name);
    steps.note(new Steps.Step(this, told, () -> show(before), () -> show(after)));
  }

  /** Does a step of the page. */
  public void take(Group.Step step) {
    change(step.label(), step.change());
  }

  private void change(String name, UnaryOperator<Studio> change) {
    Studio after;
    try {
      after = change.apply(studio.get());
    } catch (IllegalArgumentException refused) {
      message.set(String.valueOf(refused.getMessage()));
      return;
    }
    Optional<String> fault = StudioFaults.added(studio.get(), after);
    if (fault.isPresent()) {
      message.set(fault.get());
    } else {
      take(words().of("edit.step", name, thing()), after);
    }
  }

  /** Adds a fresh thing and chooses it; where there is no fresh one, a copy of the chosen one. */
  public void add() {
    lists().add(this::changeBy);
  }

  /** Copies the chosen thing and chooses the copy. */
  public void duplicate() {
    lists().duplicate(this::changeBy);
  }

  /** Takes the chosen thing away, unless something else needs it. */
  public void delete() {
    lists().delete(this::changeBy);
  }

  private StudioLists lists() {
    return new StudioLists(this, sections());
  }

  private void changeBy(String key, UnaryOperator<Studio> change) {
    change(words().of(key), change);
  }

  /** Takes the last change back, wherever it was made. */
  public void undo() {
    steps.undo();
  }

  /** Does the change again that was taken back last. */
  public void redo() {
    steps.redo();
  }

  /** Opens another studio; one that cannot be read leaves this one, with the reasons told. */
  public void open(Path from) {
    Opened<Studio> opened = KeepAStudio.open(from);
    List<String> told = new ArrayList<>();
    if (opened instanceof Opened.Ready<Studio> ready) {
      begin(ready.value(), Optional.of(from));
      told.addAll(ready.notes());
    } else {
      told.addAll(((Opened.Refused<Studio>) opened).sentences());
    }
    message.set(String.join("\n", told));
  }

  private void begin(Studio other, Optional<Path> from) {
    steps.forget(this);
    file = from;
    saved = other;
    index.set(0);
    show(other);
  }

  /** Saves to a file, keeping the version before; tells when it could not. */
  public void save(Path to) {
    Optional<String> failure = KeepAStudio.save(studio.get(), to);
    message.set(failure.orElse(words().of("studio.saved", to.getFileName())));
    if (failure.isEmpty()) {
      file = Optional.of(to);
      saved = studio.get();
      unsaved.set(false);
    }
  }
}
