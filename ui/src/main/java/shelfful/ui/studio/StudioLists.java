package shelfful.ui.studio;

import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import shelfful.studio.Studio;

/** Adding to, copying within and taking from the list behind a section. */
record StudioLists(StudioViewModel model, Sections sections) {

  /** Adds a fresh thing and chooses it; where there is no fresh one, a copy of the chosen one. */
  void add(BiConsumer<String, UnaryOperator<Studio>> change) {
    sections
        .things(model.section().get())
        .ifPresent(
            things -> {
              Studio now = model.studio().get();
              if (things.added(now).equals(now)) {
                duplicate(change);
              } else {
                change.accept("studio.add", things::added);
                chooseNew(things, now);
              }
            });
  }

  void duplicate(BiConsumer<String, UnaryOperator<Studio>> change) {
    sections
        .things(model.section().get())
        .filter(things -> things.count(model.studio().get()) > 0)
        .ifPresent(
            things -> {
              Studio now = model.studio().get();
              int index = model.index().get();
              change.accept("studio.duplicate", one -> lettered(things.copied(one, index)));
              chooseNew(things, now);
            });
  }

  private void chooseNew(Things<?> things, Studio before) {
    if (things.count(model.studio().get()) > things.count(before)) {
      model.choose(things.count(before));
    }
  }

  /** A copied glaze takes the next letter that is free, as two with one letter are refused. */
  private Studio lettered(Studio after) {
    if (model.section().get() != Section.GLAZES) {
      return after;
    }
    int last = after.glazes().size() - 1;
    String letter = Sections.freeLetter(model.studio().get());
    return Component.with(
        after,
        "glazes",
        Place.replaced(
            after.glazes(), last, Component.with(after.glazes().get(last), "letter", letter)));
  }

  void delete(BiConsumer<String, UnaryOperator<Studio>> change) {
    int index = model.index().get();
    sections
        .things(model.section().get())
        .filter(things -> things.count(model.studio().get()) > 0)
        .ifPresent(things -> change.accept("studio.delete", one -> things.without(one, index)));
  }
}
