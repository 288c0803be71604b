package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import shelfful.kiln.KeepOut;
import shelfful.kiln.Kiln;
import shelfful.measure.Length;
import shelfful.measure.Point;
import shelfful.studio.Studio;

/** What ware and posts must stay clear of in a kiln. */
record KeepOutGroups(FieldMaker make, Place<Kiln> kiln) {

  List<Group> groups(Studio studio) {
    List<Group> groups = new ArrayList<>();
    List<KeepOut> now = kiln.get().apply(studio).keepOuts();
    for (int i = 0; i < now.size(); i++) {
      groups.add(keepOut(now.get(i), i));
    }
    groups.add(
        new Group(
            make.words().of("group.keepOuts"),
            List.of(),
            List.of(make.step("addKeepOut", changed(list -> Place.and(list, fresh()))))));
    return groups;
  }

  private UnaryOperator<Studio> changed(UnaryOperator<List<KeepOut>> change) {
    Place<List<KeepOut>> all = kiln.part("keepOuts", Kiln::keepOuts);
    return studio -> all.set().apply(studio, change.apply(all.get().apply(studio)));
  }

  private Group keepOut(KeepOut now, int index) {
    Place<KeepOut> one = kiln.partIn("keepOuts", Kiln::keepOuts, index);
    Place<Point> from = one.part("from", KeepOut::from);
    Place<Point> to = one.part("to", KeepOut::to);
    return new Group(
        make.words().of("group.keepOut", now.name()),
        List.of(
            make.name("name", one.part("name", KeepOut::name)),
            make.choice("keepOutKind", one.part("kind", KeepOut::kind), KeepOut.Kind.class),
            make.length("fromX", from.part("x", Point::x), Bounds.PLACE),
            make.length("fromY", from.part("y", Point::y), Bounds.PLACE),
            make.length("toX", to.part("x", Point::x), Bounds.PLACE),
            make.length("toY", to.part("y", Point::y), Bounds.PLACE),
            make.length("across", one.part("across", KeepOut::across), Bounds.SIZE),
            make.length("bottom", one.part("bottom", KeepOut::bottom), Bounds.FROM_ZERO),
            make.length("top", one.part("top", KeepOut::top), Bounds.SIZE)),
        List.of(make.step("removeKeepOut", changed(list -> Place.without(list, index)))));
  }

  /** A cone pack in the middle of the floor, to be moved to where it stands. */
  private KeepOut fresh() {
    return new KeepOut(
        make.words().of("new.keepOut"),
        KeepOut.Kind.CONE_PACK,
        Point.ORIGIN,
        Point.ORIGIN,
        Length.ofMillimetres(40),
        Length.ZERO,
        Length.ofMillimetres(80));
  }
}
