package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;
import shelfful.ware.BisqueSetting;
import shelfful.ware.Form;
import shelfful.ware.Hollow;
import shelfful.ware.Outline;
import shelfful.ware.Piling;

/** How pieces of a form may be set with others in a bisque firing. */
record BisqueGroups(FieldMaker make, Place<Form> form) {

  List<Group> groups(Studio studio) {
    Place<BisqueSetting> setting = form.part("bisque", Form::bisque);
    List<Group> groups = new ArrayList<>();
    groups.add(whole(studio, setting));
    groups.add(piled(studio, setting));
    groups.add(hollow(studio, setting));
    return groups;
  }

  private Group whole(Studio studio, Place<BisqueSetting> setting) {
    List<Field> fields = new ArrayList<>();
    fields.add(
        make.flag(
            "rimToRim",
            setting.part(
                "rimToRim",
                BisqueSetting::rimToRim,
                (was, is) -> whole(was, was.piled(), is, was.footToFoot(), was.hollow()))));
    fields.add(
        make.flag(
            "footToFoot",
            setting.part(
                "footToFoot",
                BisqueSetting::footToFoot,
                (was, is) -> whole(was, was.piled(), was.rimToRim(), is, was.hollow()))));
    if (!setting.get().apply(studio).isAlone()) {
      fields.add(make.optionalMass("carries", setting.part("carries", BisqueSetting::carries)));
    }
    return new Group(make.words().of("group.bisque"), fields, List.of());
  }

  /** What a piece carries goes with the last way of setting anything on it. */
  private static BisqueSetting whole(
      BisqueSetting was,
      Optional<Piling> piled,
      boolean rimToRim,
      boolean footToFoot,
      Optional<Hollow> hollow) {
    boolean alone = piled.isEmpty() && !rimToRim && !footToFoot && hollow.isEmpty();
    return new BisqueSetting(
        piled, rimToRim, footToFoot, hollow, alone ? Optional.empty() : was.carries());
  }

  private Group piled(Studio studio, Place<BisqueSetting> setting) {
    Place<Optional<Piling>> piled =
        setting.part(
            "piled",
            BisqueSetting::piled,
            (was, is) -> whole(was, is, was.rimToRim(), was.footToFoot(), was.hollow()));
    if (piled.get().apply(studio).isEmpty()) {
      return new Group(
          make.words().of("group.notPiled"),
          List.of(),
          List.of(
              make.step("addPiled", now -> piled.set().apply(now, Optional.of(pilingOf(now))))));
    }
    Place<Piling> there =
        piled.part("", Optional::orElseThrow, (before, after) -> Optional.of(after));
    return new Group(
        make.words().of("group.piled"),
        List.of(
            make.count(
                "mostHigh", there.part("mostHigh", Piling::mostHigh), Piling.LEAST, Piling.MOST),
            make.length("increment", there.part("increment", Piling::increment), Bounds.SIZE)),
        List.of(make.step("removePiled", now -> piled.set().apply(now, Optional.empty()))));
  }

  /** Two high to begin with, each adding a third of the height. */
  private Piling pilingOf(Studio studio) {
    long height = form.get().apply(studio).profile().height().micrometres();
    return new Piling(Piling.LEAST, new Length(Math.max(1, height / 3)));
  }

  private Group hollow(Studio studio, Place<BisqueSetting> setting) {
    Place<Optional<Hollow>> hollow =
        setting.part(
            "hollow",
            BisqueSetting::hollow,
            (was, is) -> whole(was, was.piled(), was.rimToRim(), was.footToFoot(), is));
    if (hollow.get().apply(studio).isEmpty()) {
      return new Group(
          make.words().of("group.noHollow"),
          List.of(),
          List.of(
              make.step("addHollow", now -> hollow.set().apply(now, Optional.of(hollowOf(now))))));
    }
    Place<Hollow> there =
        hollow.part("", Optional::orElseThrow, (before, after) -> Optional.of(after));
    List<Field> fields =
        new ArrayList<>(
            new OutlineFields(make)
                .of(
                    "hollow",
                    there.part("", Hollow::clear, (one, is) -> Component.with(one, "clear", is)),
                    studio));
    fields.add(make.length("deep", there.part("deep", Hollow::deep), Bounds.SIZE));
    for (Form small : studio.forms()) {
      fields.add(holds(there, small));
    }
    return new Group(
        make.words().of("group.hollow"),
        fields,
        List.of(make.step("removeHollow", now -> hollow.set().apply(now, Optional.empty()))));
  }

  private Field holds(Place<Hollow> hollow, Form small) {
    return new Field(
        make.words().of("field.holds", small.name()),
        hollow.path() + "/forms/" + small.id(),
        Field.Kind.TICKED,
        studio -> String.valueOf(hollow.get().apply(studio).formIds().contains(small.id())),
        (studio, text) -> ticked(hollow, studio, small.id(), Boolean.parseBoolean(text)),
        List.of());
  }

  private TextReading<Studio> ticked(
      Place<Hollow> hollow, Studio studio, String id, boolean holds) {
    Hollow was = hollow.get().apply(studio);
    List<String> ids = new ArrayList<>(was.formIds());
    ids.remove(id);
    if (holds) {
      ids.add(id);
    }
    if (ids.isEmpty()) {
      return new TextReading.Refused<>(
          make.words().of("field.holdsNothing"), make.words().of("field.holdsNothingMend"));
    }
    return make.put(hollow, studio, new Hollow(was.clear(), was.deep(), ids));
  }

  /** Two thirds as wide as the form and three quarters as deep, for the first other form. */
  private Hollow hollowOf(Studio studio) {
    Form one = form.get().apply(studio);
    Outline rim = one.profile().bands().get(one.profile().bands().size() - 1).outline();
    String small =
        studio.forms().stream()
            .map(Form::id)
            .filter(id -> !id.equals(one.id()))
            .findFirst()
            .orElse(one.id());
    long height = one.profile().height().micrometres();
    return new Hollow(rim.scaledUp(2 / 3.0), new Length(height * 3 / 4), List.of(small));
  }

  /** The form's id, followed by the hollows that name the form. */
  Place<String> id() {
    Place<String> plain = form.part("id", Form::id);
    return new Place<>(
        plain.path(),
        plain.get(),
        (studio, id) -> renamed(plain.set().apply(studio, id), plain.get().apply(studio), id));
  }

  private static Studio renamed(Studio studio, String was, String is) {
    List<Form> forms = studio.forms().stream().map(form -> renamed(form, was, is)).toList();
    return Component.with(studio, "forms", forms);
  }

  private static Form renamed(Form form, String was, String is) {
    Optional<Hollow> hollow = form.bisque().hollow();
    if (hollow.isEmpty() || !hollow.get().formIds().contains(was)) {
      return form;
    }
    List<String> ids = hollow.get().formIds().stream().map(id -> id.equals(was) ? is : id).toList();
    Hollow other = new Hollow(hollow.get().clear(), hollow.get().deep(), ids);
    return Component.with(
        form, "bisque", Component.with(form.bisque(), "hollow", Optional.of(other)));
  }
}
