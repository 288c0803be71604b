package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import shelfful.measure.TextReading;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Atmosphere;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.Zone;

/** The page of a glaze. */
record GlazePage(FieldMaker make, Place<Glaze> glaze) {
  private static final String EITHER = "EITHER";

  List<Group> groups() {
    List<Field> zones = new ArrayList<>();
    for (Zone zone : Zone.values()) {
      zones.add(zone(zone, "likes", Glaze::likes));
    }
    for (Zone zone : Zone.values()) {
      zones.add(zone(zone, "forbidden", Glaze::forbidden));
    }
    return List.of(
        new Group(
            make.words().of("group.glaze"),
            List.of(
                make.name("name", glaze.part("name", Glaze::name)),
                new IdField(make).of(id()),
                letter(),
                make.colour("colour", glaze.part("colour", Glaze::colour))),
            List.of()),
        new Group(
            make.words().of("group.glazeFiring"),
            List.of(
                make.cone("cone", glaze.part("cone", Glaze::cone)),
                atmosphere(),
                make.optionalLength("gap", glaze.part("gap", Glaze::gap), Bounds.CLEARANCE),
                make.flag("runny", glaze.part("runny", Glaze::runny)),
                make.length(
                    "bareFootWanted", glaze.part("bareFoot", Glaze::bareFoot), Bounds.CLEARANCE)),
            List.of()),
        new Group(make.words().of("group.zones"), zones, List.of()));
  }

  private Field letter() {
    return make.typed(
        "letter",
        glaze.part("letter", Glaze::letter),
        Function.identity(),
        text ->
            text.strip().matches("[\\p{L}\\p{N}]{1,2}")
                ? new TextReading.Understood<>(text.strip())
                : new TextReading.Refused<>(
                    make.words().of("field.notLetter", text.strip()),
                    make.words().of("field.writeLetter")));
  }

  private Field atmosphere() {
    return make.choice(
        "atmosphere",
        glaze.part("atmosphere", Glaze::atmosphere),
        List.of(
            new Field.Choice(EITHER, make.words().of("choice.either")),
            make.choice(Atmosphere.OXIDATION),
            make.choice(Atmosphere.REDUCTION)),
        now -> now.map(Enum::name).orElse(EITHER),
        (was, is) -> is.equals(EITHER) ? Optional.empty() : Optional.of(Atmosphere.valueOf(is)));
  }

  private Field zone(Zone zone, String component, Function<Glaze, Set<Zone>> zones) {
    Place<Boolean> ticked =
        glaze.part(
            component + "/" + zone.ordinal(),
            one -> zones.apply(one).contains(zone),
            (one, is) -> {
              Set<Zone> other = EnumSet.noneOf(Zone.class);
              other.addAll(zones.apply(one));
              other.removeIf(old -> old == zone);
              if (is) {
                other.add(zone);
              }
              return Component.with(one, component, Set.copyOf(other));
            });
    return make.flag(component + "." + zone.name(), ticked);
  }

  /** The id, followed by the rules that name the glaze. */
  private Place<String> id() {
    Place<String> plain = glaze.part("id", Glaze::id);
    return new Place<>(
        plain.path(),
        plain.get(),
        (studio, id) -> renamed(plain.set().apply(studio, id), plain.get().apply(studio), id));
  }

  private static Studio renamed(Studio studio, String was, String is) {
    HouseRules rules = studio.rules();
    List<KeptApart> other =
        rules.keptApart().stream()
            .map(
                one ->
                    new KeptApart(
                        one.glazeId().equals(was) ? is : one.glazeId(),
                        one.otherGlazeId().equals(was) ? is : one.otherGlazeId(),
                        one.apartness(),
                        one.distance()))
            .toList();
    return Component.with(studio, "rules", Component.with(rules, "keptApart", other));
  }
}
