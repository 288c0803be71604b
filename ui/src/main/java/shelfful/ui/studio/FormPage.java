package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.studio.Studio;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Lid;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/** The page of a form. */
record FormPage(FieldMaker make, Place<Form> form) {
  private static final double MOST_SHRINKAGE = 29.999;

  List<Group> groups(Studio studio) {
    Place<Profile> profile = new ProfileGroups(make, form).place();
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            make.words().of("group.form"),
            List.of(
                make.name("name", form.part("name", Form::name)),
                new IdField(make).of(new BisqueGroups(make, form).id()),
                make.choice("measuredAt", form.part("measuredAt", Form::measuredAt), Stage.class),
                make.mass("mass", form.part("mass", Form::mass)),
                make.length("tolerance", form.part("tolerance", Form::tolerance), Bounds.CLEARANCE),
                make.length("bareFoot", form.part("bareFoot", Form::bareFoot), Bounds.CLEARANCE)),
            List.of()));
    groups.addAll(new ProfileGroups(make, form).groups(studio, profile));
    groups.addAll(new LugGroups(make, profile).groups(studio));
    groups.addAll(new BisqueGroups(make, form).groups(studio));
    groups.add(lid(studio));
    groups.add(shrinkage());
    return groups;
  }

  private Group shrinkage() {
    Place<Shrinkage> shrinkage = form.part("shrinkage", Form::shrinkage);
    return new Group(
        make.words().of("group.shrinkage"),
        List.of(
            make.number("drying", shrinkage.part("drying", Shrinkage::drying), 0, MOST_SHRINKAGE),
            make.number("bisque", shrinkage.part("bisque", Shrinkage::bisque), 0, MOST_SHRINKAGE),
            make.number("glaze", shrinkage.part("glaze", Shrinkage::glaze), 0, MOST_SHRINKAGE)),
        List.of());
  }

  private Group lid(Studio studio) {
    Place<Optional<Lid>> lid = form.part("lid", Form::lid);
    if (lid.get().apply(studio).isEmpty()) {
      return new Group(
          make.words().of("group.noLid"),
          List.of(),
          List.of(
              make.step("addLid", before -> lid.set().apply(before, Optional.of(lidFor(before))))));
    }
    Place<Lid> there = lid.part("", Optional::orElseThrow, (before, after) -> Optional.of(after));
    List<Field> fields =
        new ArrayList<>(
            new OutlineFields(make)
                .of(
                    "lid",
                    there.part("", Lid::outline, (one, is) -> Component.with(one, "outline", is)),
                    studio));
    fields.add(make.length("lidHeight", there.part("height", Lid::height), Bounds.SIZE));
    fields.add(make.length("lidRise", there.part("rise", Lid::rise), Bounds.SIZE));
    fields.add(make.mass("lidMass", there.part("mass", Lid::mass)));
    return new Group(
        make.words().of("group.lid"),
        fields,
        List.of(make.step("removeLid", before -> lid.set().apply(before, Optional.empty()))));
  }

  private Lid lidFor(Studio studio) {
    Form one = form.get().apply(studio);
    List<Band> bands = one.profile().bands();
    return new Lid(
        bands.get(bands.size() - 1).outline(),
        Length.ofMillimetres(30),
        Length.ofMillimetres(20),
        new Mass(100));
  }
}
