package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import shelfful.measure.Length;
import shelfful.measure.TextReading;
import shelfful.studio.Studio;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Lug;
import shelfful.ware.Profile;

/** Foot, height and bands of a form. Bands always touch and fill the height. */
record ProfileGroups(FieldMaker make, Place<Form> form) {

  Place<Profile> place() {
    return form.part("", Form::profile, (one, is) -> Component.with(one, "profile", is));
  }

  List<Group> groups(Studio studio, Place<Profile> profile) {
    List<Group> groups = new ArrayList<>();
    List<Field> first = new ArrayList<>();
    first.add(height(profile));
    first.addAll(new OutlineFields(make).of("foot", profile.part("foot", Profile::foot), studio));
    groups.add(
        new Group(
            make.words().of("group.profile"),
            first,
            List.of(
                make.step(
                    "addBand", before -> profile.set().apply(before, split(before, profile))))));
    int count = profile.get().apply(studio).bands().size();
    for (int i = 0; i < count; i++) {
      groups.add(band(studio, profile, i));
    }
    return groups;
  }

  private Field height(Place<Profile> profile) {
    Place<Profile> whole = new Place<>(profile.path() + "/height", profile.get(), profile.set());
    return new Field(
        make.label("height"),
        whole.path(),
        Field.Kind.TYPED,
        studio -> make.manner().length(profile.get().apply(studio).height()),
        (studio, text) ->
            make.manner()
                .length(text, Bounds.SIZE)
                .then(to -> raised(profile.get().apply(studio), to))
                .then(value -> make.put(profile, studio, value)),
        List.of());
  }

  private TextReading<Profile> raised(Profile profile, Length height) {
    List<Band> bands = profile.bands();
    Band top = bands.get(bands.size() - 1);
    for (Lug lug : profile.lugs()) {
      if (lug.to().isLongerThan(height)) {
        return refused("lugAbove", lug.name(), lug.to());
      }
    }
    if (!height.isLongerThan(top.from())) {
      return refused("bandAbove", make.words().of("group.band", bands.size()), top.from());
    }
    List<Band> other =
        Place.replaced(bands, bands.size() - 1, new Band(top.outline(), top.from(), height));
    return new TextReading.Understood<>(new Profile(profile.foot(), height, other, profile.lugs()));
  }

  private <T> TextReading<T> refused(String key, String what, Length at) {
    return new TextReading.Refused<>(
        make.words().of("field." + key, what, make.manner().length(at)),
        make.words().of("field." + key + "Mend", what));
  }

  private Group band(Studio studio, Place<Profile> profile, int index) {
    int count = profile.get().apply(studio).bands().size();
    Place<Band> band = profile.partIn("bands", Profile::bands, index);
    // A single band is written as the form's body.
    Place<Band> called =
        count == 1 ? new Place<>(profile.path() + "/body", band.get(), band.set()) : band;
    List<Field> fields = new ArrayList<>();
    if (index < count - 1) {
      fields.add(border(profile, index));
    }
    fields.addAll(
        new OutlineFields(make)
            .of(
                "band",
                called.part("", Band::outline, (one, is) -> Component.with(one, "outline", is)),
                studio));
    List<Group.Step> steps =
        count == 1
            ? List.of()
            : List.of(
                make.step(
                    "removeBand",
                    before -> profile.set().apply(before, joined(before, profile, index))));
    String title = count == 1 ? "group.body" : "group.band";
    return new Group(make.words().of(title, index + 1), fields, steps);
  }

  private Field border(Place<Profile> profile, int index) {
    return new Field(
        make.label("bandTo"),
        profile.path() + "/bands/" + index + "/to",
        Field.Kind.TYPED,
        studio -> make.manner().length(profile.get().apply(studio).bands().get(index).to()),
        (studio, text) ->
            make.manner()
                .length(text, Bounds.SIZE)
                .then(to -> moved(profile.get().apply(studio), index, to))
                .then(value -> make.put(profile, studio, value)),
        List.of());
  }

  private TextReading<Profile> moved(Profile profile, int index, Length to) {
    Band lower = profile.bands().get(index);
    Band upper = profile.bands().get(index + 1);
    if (!to.isLongerThan(lower.from()) || !upper.to().isLongerThan(to)) {
      return make.manner()
          .outside(
              make.manner().length(to),
              make.manner().length(lower.from()),
              make.manner().length(upper.to()));
    }
    List<Band> bands =
        Place.replaced(profile.bands(), index, new Band(lower.outline(), lower.from(), to));
    return new TextReading.Understood<>(
        Component.with(
            profile,
            "bands",
            Place.replaced(bands, index + 1, new Band(upper.outline(), to, upper.to()))));
  }

  /** The top band cut in half, so that its upper part can be made wider. */
  private static Profile split(Studio studio, Place<Profile> place) {
    Profile profile = place.get().apply(studio);
    int last = profile.bands().size() - 1;
    Band top = profile.bands().get(last);
    Length middle = new Length((top.from().micrometres() + top.to().micrometres()) / 2);
    List<Band> bands =
        Place.replaced(profile.bands(), last, new Band(top.outline(), top.from(), middle));
    return Component.with(
        profile, "bands", Place.and(bands, new Band(top.outline(), middle, top.to())));
  }

  /** A band taken away; its neighbour fills its place. */
  private static Profile joined(Studio studio, Place<Profile> place, int index) {
    Profile profile = place.get().apply(studio);
    Band gone = profile.bands().get(index);
    int neighbour = index == 0 ? 1 : index - 1;
    Band grown = profile.bands().get(neighbour);
    Band whole =
        index == 0
            ? new Band(grown.outline(), gone.from(), grown.to())
            : new Band(grown.outline(), grown.from(), gone.to());
    return Component.with(
        profile, "bands", Place.without(Place.replaced(profile.bands(), neighbour, whole), index));
  }
}
