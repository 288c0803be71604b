package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.studio.Studio;
import shelfful.ware.Lug;
import shelfful.ware.Profile;

/** Handles, spouts and knobs of a form. */
record LugGroups(FieldMaker make, Place<Profile> profile) {
  private static final double FULL_TURN = 360;

  List<Group> groups(Studio studio) {
    List<Group> groups = new ArrayList<>();
    List<Lug> lugs = profile.get().apply(studio).lugs();
    for (int i = 0; i < lugs.size(); i++) {
      groups.add(lug(lugs.get(i), i));
    }
    groups.add(
        new Group(
            make.words().of("group.lugs"),
            List.of(),
            List.of(make.step("addLug", before -> profile.set().apply(before, added(before))))));
    return groups;
  }

  private Group lug(Lug now, int index) {
    Place<Lug> lug = profile.partIn("lugs", Profile::lugs, index);
    Place<Double> degrees =
        lug.part(
            "direction",
            one -> one.direction().degrees(),
            (one, is) -> Component.with(one, "direction", Angle.ofDegrees(is)));
    return new Group(
        make.words().of("group.lug", now.name()),
        List.of(
            make.name("lugName", lug.part("name", Lug::name)),
            make.number("direction", degrees, 0, FULL_TURN),
            make.length("reach", lug.part("reach", Lug::reach), Bounds.SIZE),
            make.length("lugWidth", lug.part("width", Lug::width), Bounds.SIZE),
            make.length("lugFrom", lug.part("from", Lug::from), Bounds.FROM_ZERO),
            make.length("lugTo", lug.part("to", Lug::to), Bounds.SIZE)),
        List.of(
            make.step(
                "removeLug",
                before ->
                    profile
                        .set()
                        .apply(
                            before,
                            Component.with(
                                profile.get().apply(before),
                                "lugs",
                                Place.without(profile.get().apply(before).lugs(), index))))));
  }

  /** A handle in the middle half of the height, reaching a third past the body. */
  private Profile added(Studio studio) {
    Profile one = profile.get().apply(studio);
    long height = one.height().micrometres();
    Length half = new Length(one.bands().get(0).outline().width().micrometres() / 2);
    Lug handle =
        new Lug(
            make.words().of("new.lug"),
            Angle.ZERO,
            half.plus(new Length(half.micrometres() * 2 / 3)),
            Length.ofMillimetres(15),
            new Length(height / 4),
            new Length(height * 3 / 4));
    return Component.with(one, "lugs", Place.and(one.lugs(), handle));
  }
}
