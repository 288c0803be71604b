package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import shelfful.kiln.Chamber;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Loading;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfPlace;
import shelfful.studio.Studio;

/** The page of a kiln: its chamber, what is in the way, and its column plans. */
record KilnPage(FieldMaker make, Place<Kiln> kiln) {

  List<Group> groups(Studio studio) {
    Place<Chamber> chamber = kiln.part("chamber", Kiln::chamber);
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            make.words().of("group.kiln"),
            List.of(
                make.name("name", kiln.part("name", Kiln::name)),
                new IdField(make).of(kiln.part("id", Kiln::id)),
                make.choice("loading", kiln.part("loading", Kiln::loading), Loading.class),
                make.optionalCone("hottest", kiln.part("hottest", Kiln::hottest))),
            List.of()));
    groups.add(
        new Group(
            make.words().of("group.chamber"),
            new ChamberFields(make).of(chamber, studio),
            List.of()));
    groups.addAll(new KeepOutGroups(make, kiln).groups(studio));
    List<ColumnPlan> plans = kiln.get().apply(studio).columnPlans();
    for (int i = 0; i < plans.size(); i++) {
      groups.add(plan(studio, i));
    }
    return groups;
  }

  private Group plan(Studio studio, int index) {
    Place<ColumnPlan> plan = kiln.partIn("columnPlans", Kiln::columnPlans, index);
    ColumnPlan now = plan.get().apply(studio);
    List<Field> fields = new ArrayList<>();
    fields.add(make.name("planName", plan.part("name", ColumnPlan::name)));
    for (int i = 0; i < now.columns().size(); i++) {
      int column = i;
      fields.add(
          make.told(
              "column",
              plan.path() + "/columns/" + i,
              one -> told(one, plan.get().apply(one).columns().get(column))));
    }
    shelvesOf(now).forEach(id -> fields.addAll(count(studio, id)));
    return new Group(make.words().of("group.plan", now.name()), fields, List.of());
  }

  private String told(Studio studio, Column column) {
    List<String> names = new ArrayList<>();
    for (ShelfPlace place : column.places()) {
      String id = place.shelfIds().get(0);
      names.add(studio.shelf(id).map(Shelf::name).orElse(id));
    }
    String shelves = String.join(" + ", names);
    return column.standsOn().isEmpty()
        ? make.words().of("column.onFloor", column.id(), shelves, column.posts().size())
        : make.words()
            .of(
                "column.onOthers",
                column.id(),
                shelves,
                column.posts().size(),
                String.join(", ", column.standsOn()));
  }

  private static Set<String> shelvesOf(ColumnPlan plan) {
    Set<String> ids = new LinkedHashSet<>();
    plan.columns().forEach(column -> column.places().forEach(one -> ids.addAll(one.shelfIds())));
    return ids;
  }

  /** How many of a shelf are in stock, to be changed where its use is seen. */
  private List<Field> count(Studio studio, String id) {
    for (int i = 0; i < studio.shelves().size(); i++) {
      Shelf shelf = studio.shelves().get(i);
      if (shelf.id().equals(id)) {
        Field count =
            make.count("count", Sections.shelf(i).part("count", Shelf::count), 0, ShelfPage.MOST);
        return List.of(
            new Field(
                make.words().of("field.countOf", shelf.name()),
                count.path(),
                count.kind(),
                count.shown(),
                count.put(),
                count.choices()));
      }
    }
    return List.of();
  }
}
