package shelfful.ui.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.studio.Clearances;
import shelfful.studio.HouseRules;
import shelfful.studio.Studio;
import shelfful.ware.Catcher;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;

/** The page of the studio itself and its house rules. */
record RulesPage(FieldMaker make) {
  private static final Place<Studio> STUDIO = new Place<>("", studio -> studio, (was, is) -> is);
  private static final Place<HouseRules> RULES = STUDIO.part("rules", Studio::rules);
  private static final int MOST_DAYS = 365;

  List<Group> groups(Studio studio) {
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            make.words().of("group.studio"),
            List.of(
                make.name("name", STUDIO.part("name", Studio::name)),
                make.choice("studioUnit", STUDIO.part("unit", Studio::unit), LengthUnit.class)),
            List.of()));
    groups.add(clearances());
    groups.add(setting());
    groups.add(catcher());
    for (int i = 0; i < studio.rules().keptApart().size(); i++) {
      groups.add(keptApart(studio, i));
    }
    groups.add(
        new Group(
            make.words().of("group.keptApart"),
            List.of(),
            studio.glazes().size() < 2
                ? List.of()
                : List.of(make.step("addKeptApart", RulesPage::added))));
    return groups;
  }

  private Group clearances() {
    return new Group(
        make.words().of("group.clearances"),
        List.of(
            clearance("glazedToGlazed", Clearances::glazedToGlazed),
            clearance("bisqueToBisque", Clearances::bisqueToBisque),
            clearance("wareToPost", Clearances::wareToPost),
            clearance("wareToWall", Clearances::wareToWall),
            clearance("wareToKeepOut", Clearances::wareToKeepOut),
            clearance("footToShelfEdge", Clearances::footToShelfEdge),
            clearance("headroom", Clearances::headroom),
            clearance("underLid", Clearances::underLid),
            clearance("offFloor", Clearances::offFloor),
            clearance("leastShelfToShelf", Clearances::leastShelfToShelf)),
        List.of());
  }

  private Field clearance(String component, Function<Clearances, Length> get) {
    Place<Length> place = RULES.part("clearances", HouseRules::clearances).part(component, get);
    boolean layer = component.equals("leastShelfToShelf");
    return make.length(component, place, layer ? Bounds.LAYER : Bounds.CLEARANCE);
  }

  private Group setting() {
    return new Group(
        make.words().of("group.setting"),
        List.of(
            make.flag(
                "bellyMayPassEdge", RULES.part("bellyMayPassEdge", HouseRules::bellyMayPassEdge)),
            make.count(
                "mostPostPieces", RULES.part("mostPostPieces", HouseRules::mostPostPieces), 1, 2),
            make.count(
                "dueSoonDays", RULES.part("dueSoonDays", HouseRules::dueSoonDays), 0, MOST_DAYS)),
        List.of());
  }

  private Group catcher() {
    Place<Catcher> catcher = RULES.part("catcher", HouseRules::catcher);
    return new Group(
        make.words().of("group.catcher"),
        List.of(
            make.length(
                "catcherThickness", catcher.part("thickness", Catcher::thickness), Bounds.CATCHER),
            make.length("catcherMargin", catcher.part("margin", Catcher::margin), Bounds.CLEARANCE),
            make.mass("catcherMass", catcher.part("mass", Catcher::mass))),
        List.of());
  }

  private Group keptApart(Studio studio, int index) {
    Place<KeptApart> rule = RULES.partIn("keptApart", HouseRules::keptApart, index);
    List<Field.Choice> glazes =
        studio.glazes().stream().map(one -> new Field.Choice(one.id(), one.name())).toList();
    List<Field> fields = new ArrayList<>();
    Place<String> one = rule.part("glazes/0", KeptApart::glazeId, with("glazeId"));
    Place<String> other = rule.part("glazes/1", KeptApart::otherGlazeId, with("otherGlazeId"));
    fields.add(make.choice("glazeOne", one, glazes, id -> id, (was, is) -> is));
    fields.add(make.choice("glazeOther", other, glazes, id -> id, (was, is) -> is));
    fields.add(
        make.choice(
            "apartness",
            rule,
            List.of(KeptApart.Apartness.values()).stream().map(make::choice).toList(),
            now -> now.apartness().name(),
            RulesPage::apart));
    if (rule.get().apply(studio).distance().isPresent()) {
      Place<Length> distance =
          rule.part(
              "distance",
              now -> now.distance().orElseThrow(),
              (now, is) -> Component.with(now, "distance", Optional.of(is)));
      fields.add(make.length("distance", distance, Bounds.LAYER));
    }
    return new Group(
        make.words().of("group.keptApartPair", index + 1),
        fields,
        List.of(make.step("removeKeptApart", changed(list -> Place.without(list, index)))));
  }

  private static BiFunction<KeptApart, String, KeptApart> with(String component) {
    return (rule, id) -> Component.with(rule, component, id);
  }

  private static KeptApart apart(KeptApart was, String is) {
    KeptApart.Apartness apartness = KeptApart.Apartness.valueOf(is);
    return new KeptApart(
        was.glazeId(),
        was.otherGlazeId(),
        apartness,
        apartness == KeptApart.Apartness.BY_DISTANCE
            ? Optional.of(Length.ofMillimetres(50))
            : Optional.empty());
  }

  private static UnaryOperator<Studio> changed(UnaryOperator<List<KeptApart>> change) {
    Place<List<KeptApart>> all = RULES.part("keptApart", HouseRules::keptApart);
    return studio -> all.set().apply(studio, change.apply(all.get().apply(studio)));
  }

  /** The first two glazes that no rule is about yet, or else the first two. */
  private static Studio added(Studio studio) {
    List<String> ids = studio.glazes().stream().map(Glaze::id).toList();
    for (String one : ids) {
      for (String other : ids) {
        if (one.compareTo(other) < 0
            && studio.rules().keptApart().stream().noneMatch(rule -> rule.isAbout(one, other))) {
          return with(studio, one, other);
        }
      }
    }
    return with(studio, ids.get(0), ids.get(1));
  }

  private static Studio with(Studio studio, String one, String other) {
    KeptApart rule =
        new KeptApart(one, other, KeptApart.Apartness.NOT_ON_ONE_LAYER, Optional.empty());
    return changed(list -> Place.and(list, rule)).apply(studio);
  }
}
