package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.studio.Studio;

/** The page of one way of standing columns: its shelves and posts, place by place. */
record PlanPage(FieldMaker make, Place<ColumnPlan> plan) {

  List<Group> groups(Studio studio) {
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            make.words().of("group.columns"),
            List.of(
                make.name("planName", plan.part("name", ColumnPlan::name)),
                new IdField(make).of(plan.part("id", ColumnPlan::id))),
            List.of()));
    List<Column> columns = plan.get().apply(studio).columns();
    for (int i = 0; i < columns.size(); i++) {
      groups.add(column(studio, i));
    }
    return groups;
  }

  private Group column(Studio studio, int index) {
    Column now = plan.get().apply(studio).columns().get(index);
    List<Field> fields = new ArrayList<>(new ShelfPlaceFields(make, plan, index).of(studio));
    fields.addAll(new PostPlaceFields(make, plan, index).of(studio));
    String title =
        now.standsOn().isEmpty()
            ? make.words().of("group.column", now.id())
            : make.words().of("group.columnOn", now.id(), String.join(", ", now.standsOn()));
    ColumnSteps steps = new ColumnSteps(index);
    return new Group(
        title,
        fields,
        List.of(
            step("addPlace", steps::withPlace),
            step("removePlace", steps::withoutLastPlace),
            step("addPost", steps::withPost),
            step("removePost", steps::withoutLastPost),
            step("addColumn", steps::withColumnOnTop),
            step("removeColumn", steps::without)));
  }

  private Group.Step step(String key, UnaryOperator<ColumnPlan> change) {
    return make.step(
        key, studio -> plan.set().apply(studio, change.apply(plan.get().apply(studio))));
  }
}
