package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.studio.Studio;

/** The page of a kind of shelf. */
record ShelfPage(FieldMaker make, Place<Shelf> shelf) {
  static final int MOST = 1000;

  List<Group> groups(Studio studio) {
    List<Field> sizes =
        new ArrayList<>(
            new ShelfOutlineFields(make)
                .of(
                    shelf.part("", Shelf::outline, (one, is) -> Component.with(one, "outline", is)),
                    studio));
    sizes.add(make.length("thickness", shelf.part("thickness", Shelf::thickness), Bounds.SIZE));
    return List.of(
        new Group(
            make.words().of("group.shelf"),
            List.of(
                make.name("name", shelf.part("name", Shelf::name)),
                new IdField(make).of(id()),
                make.count("count", shelf.part("count", Shelf::count), 0, MOST)),
            List.of()),
        new Group(make.words().of("group.sizes"), sizes, List.of()),
        new Group(
            make.words().of("group.limits"),
            List.of(
                make.optionalMass("massLimit", shelf.part("massLimit", Shelf::massLimit)),
                make.optionalCone("hottest", shelf.part("hottest", Shelf::hottest))),
            List.of()));
  }

  /** The id, followed by the column plans that name the shelf. */
  private Place<String> id() {
    Place<String> plain = shelf.part("id", Shelf::id);
    return new Place<>(
        plain.path(),
        plain.get(),
        (studio, id) -> renamed(plain.set().apply(studio, id), plain.get().apply(studio), id));
  }

  private static Studio renamed(Studio studio, String was, String is) {
    List<Kiln> kilns =
        studio.kilns().stream()
            .map(
                kiln ->
                    Component.with(
                        kiln,
                        "columnPlans",
                        kiln.columnPlans().stream().map(plan -> renamed(plan, was, is)).toList()))
            .toList();
    return Component.with(studio, "kilns", kilns);
  }

  private static ColumnPlan renamed(ColumnPlan plan, String was, String is) {
    List<Column> columns = new ArrayList<>();
    for (Column column : plan.columns()) {
      List<ShelfPlace> places =
          column.places().stream().map(place -> renamed(place, was, is)).toList();
      columns.add(Component.with(column, "places", places));
    }
    return Component.with(plan, "columns", columns);
  }

  private static ShelfPlace renamed(ShelfPlace place, String was, String is) {
    List<String> ids = place.shelfIds().stream().map(id -> id.equals(was) ? is : id).toList();
    return Component.with(place, "shelfIds", ids);
  }
}
