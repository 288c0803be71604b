package shelfful.studio;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shelfful.kiln.Kiln;
import shelfful.kiln.Post;
import shelfful.kiln.Shelf;
import shelfful.measure.LengthUnit;
import shelfful.ware.Form;
import shelfful.ware.Glaze;

/**
 * Everything a potter owns and decides. Ids are unique within each list.
 *
 * @param name of the studio
 * @param unit people there read lengths in
 */
public record Studio(
    String name,
    LengthUnit unit,
    List<Form> forms,
    List<Glaze> glazes,
    List<Kiln> kilns,
    List<Shelf> shelves,
    List<Post> posts,
    HouseRules rules) {
  /** Takes its own copies. */
  public Studio {
    forms = List.copyOf(forms);
    glazes = List.copyOf(glazes);
    kilns = List.copyOf(kilns);
    shelves = List.copyOf(shelves);
    posts = List.copyOf(posts);
  }

  public Optional<Form> form(String id) {
    return find(forms, Form::id, id);
  }

  public Optional<Glaze> glaze(String id) {
    return find(glazes, Glaze::id, id);
  }

  public Optional<Kiln> kiln(String id) {
    return find(kilns, Kiln::id, id);
  }

  public Optional<Shelf> shelf(String id) {
    return find(shelves, Shelf::id, id);
  }

  public Optional<Post> post(String id) {
    return find(posts, Post::id, id);
  }

  private static <T> Optional<T> find(List<T> things, Function<T, String> idOf, String id) {
    return things.stream().filter(thing -> idOf.apply(thing).equals(id)).findFirst();
  }
}
