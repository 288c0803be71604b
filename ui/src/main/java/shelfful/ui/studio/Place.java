package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import shelfful.studio.Studio;

/**
 * Where something lies within a studio: how to get it, and how to get a studio with another in its
 * place.
 *
 * @param path in the studio's file, such as {@code /forms/3}
 */
record Place<T>(String path, Function<Studio, T> get, BiFunction<Studio, T, Studio> set) {

  /** One of a list of a studio's things. */
  static <T> Place<T> in(
      String list,
      Function<Studio, List<T>> all,
      BiFunction<Studio, List<T>, Studio> with,
      int index) {
    return new Place<>(
        "/" + list + "/" + index,
        studio -> all.apply(studio).get(index),
        (studio, thing) -> with.apply(studio, replaced(all.apply(studio), index, thing)));
  }

  /** A part of this thing. */
  <P> Place<P> part(String step, Function<T, P> getPart, BiFunction<T, P, T> setPart) {
    return new Place<>(
        step.isEmpty() ? path : path + "/" + step,
        studio -> getPart.apply(get.apply(studio)),
        (studio, part) -> set.apply(studio, setPart.apply(get.apply(studio), part)));
  }

  /** A component of this record. */
  <P> Place<P> part(String component, Function<T, P> getPart) {
    return part(component, getPart, (thing, part) -> Component.with(thing, component, part));
  }

  /** One of a list that is a component of this record. */
  <P> Place<P> partIn(String component, Function<T, List<P>> list, int index) {
    return part(
        component + "/" + index,
        thing -> list.apply(thing).get(index),
        (thing, part) ->
            Component.with(thing, component, replaced(list.apply(thing), index, part)));
  }

  static <P> List<P> replaced(List<P> list, int index, P with) {
    List<P> other = new ArrayList<>(list);
    other.set(index, with);
    return List.copyOf(other);
  }

  static <P> List<P> without(List<P> list, int index) {
    List<P> other = new ArrayList<>(list);
    other.remove(index);
    return List.copyOf(other);
  }

  static <P> List<P> and(List<P> list, P more) {
    List<P> other = new ArrayList<>(list);
    other.add(more);
    return List.copyOf(other);
  }
}
