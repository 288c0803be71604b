package shelfful.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import shelfful.geometry.Capsule;
import shelfful.kiln.Column;
import shelfful.kiln.ColumnPlan;
import shelfful.kiln.Kiln;
import shelfful.kiln.Shelf;
import shelfful.kiln.ShelfOutline;
import shelfful.kiln.ShelfPlace;
import shelfful.load.LoadRequest;
import shelfful.measure.Mass;
import shelfful.studio.Studio;

/**
 * A column plan in which shelves that lie side by side at one height are one shelf with a joint
 * across it, so that ware may reach over the joint. Planned like any other; {@link ApartLoad}
 * writes what comes of it with the shelves there are.
 */
final class JoinedPlan {
  private static final String AND = "+";

  private final LoadRequest asked;
  private final ColumnPlan plan;
  private final List<TwinColumns> pairs;
  private final Map<String, Shelf> halves = new HashMap<>();
  private final List<Shelf> wholes = new ArrayList<>();
  private final LoadRequest request;
  private final ColumnPlan joined;
  private final Map<String, Joint> joints = new HashMap<>();

  private JoinedPlan(LoadRequest asked, ColumnPlan plan, List<TwinColumns> pairs) {
    this.asked = asked;
    this.plan = plan;
    this.pairs = pairs;
    Map<String, Shelf> shelves = new LinkedHashMap<>();
    asked.studio().shelves().forEach(shelf -> shelves.put(shelf.id(), shelf));
    outlines().forEach((half, outlines) -> lay(shelves, half, outlines));
    this.joined = new ColumnPlan(plan.id(), plan.name(), columns());
    pairs.forEach(pair -> joints.put(pair.id(), joint(pair)));
    this.request = request(List.copyOf(shelves.values()));
  }

  /** The plan with the shelves of each column of two joined; empty when there is none. */
  static Optional<JoinedPlan> withinColumns(LoadRequest request, ColumnPlan plan) {
    return of(request, plan, TwinColumns.within(request.studio(), plan));
  }

  /** The plan with columns joined in pairs, too; empty when no two of them join. */
  static Optional<JoinedPlan> acrossColumns(LoadRequest request, ColumnPlan plan) {
    List<TwinColumns> pairs = TwinColumns.across(request.studio(), plan);
    boolean across = pairs.stream().anyMatch(pair -> !pair.isWithinAColumn());
    return across ? of(request, plan, pairs) : Optional.empty();
  }

  private static Optional<JoinedPlan> of(
      LoadRequest request, ColumnPlan plan, List<TwinColumns> pairs) {
    if (pairs.isEmpty() || !request.studio().rules().bellyMayPassEdge()) {
      return Optional.empty();
    }
    return Optional.of(new JoinedPlan(request, plan, pairs)).filter(JoinedPlan::keepsAll);
  }

  /** The outlines that two shelves of each kind make up together. */
  private Map<Shelf, List<ShelfOutline>> outlines() {
    Map<Shelf, List<ShelfOutline>> outlines = new LinkedHashMap<>();
    for (TwinColumns pair : pairs) {
      for (int k = 0; k < pair.shelves().size(); k++) {
        ShelfOutline outline = pair.twins().get(k).outline();
        List<ShelfOutline> known =
            outlines.computeIfAbsent(pair.shelves().get(k), half -> new ArrayList<>());
        if (!known.contains(outline)) {
          known.add(outline);
        }
      }
    }
    return outlines;
  }

  private void lay(Map<String, Shelf> shelves, Shelf half, List<ShelfOutline> outlines) {
    int count = twins(half) / outlines.size();
    for (ShelfOutline outline : outlines) {
      Shelf whole = whole(half, outline, outlines.indexOf(outline), count);
      halves.put(whole.id(), half);
      wholes.add(whole);
      shelves.put(whole.id(), whole);
    }
    shelves.put(half.id(), fewer(half, half.count() - 2 * count * outlines.size()));
  }

  /** How many twins of a kind of shelf there can be, what lies alone elsewhere left its share. */
  private int twins(Shelf half) {
    int paired = 0;
    for (TwinColumns pair : pairs) {
      paired += pair.shelves().contains(half) ? 2 : 0;
    }
    int lying = 0;
    for (Column column : plan.columns()) {
      for (ShelfPlace place : column.places()) {
        lying += place.shelfIds().contains(half.id()) ? 1 : 0;
      }
    }
    return half.count() * paired / lying / 2;
  }

  private static Shelf whole(Shelf half, ShelfOutline outline, int number, int count) {
    return new Shelf(
        half.id() + AND + half.id() + (number == 0 ? "" : AND + number),
        half.name(),
        outline,
        half.thickness(),
        half.massLimit().map(limit -> new Mass(2 * limit.grams())),
        half.hottest(),
        count);
  }

  private static Shelf fewer(Shelf shelf, int count) {
    return new Shelf(
        shelf.id(),
        shelf.name(),
        shelf.outline(),
        shelf.thickness(),
        shelf.massLimit(),
        shelf.hottest(),
        count);
  }

  private List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (Column column : plan.columns()) {
      Optional<TwinColumns> pair = pairs.stream().filter(p -> p.isOf(column)).findFirst();
      List<String> below = column.standsOn().stream().map(this::standsFor).distinct().toList();
      if (pair.isEmpty()) {
        columns.add(new Column(column.id(), column.places(), column.posts(), below));
      } else if (columns.stream().noneMatch(done -> done.id().equals(pair.get().id()))) {
        columns.add(together(pair.get(), below));
      }
    }
    return columns;
  }

  private Column together(TwinColumns pair, List<String> below) {
    List<String> ids = new ArrayList<>();
    for (int k = 0; k < pair.shelves().size(); k++) {
      ids.add(whole(pair.shelves().get(k).id(), pair.twins().get(k).outline()));
    }
    return new Column(pair.id(), List.of(pair.twins().get(0).place(ids)), pair.posts(), below);
  }

  private String standsFor(String columnId) {
    return pairs.stream()
        .filter(pair -> pair.first().id().equals(columnId) || pair.second().id().equals(columnId))
        .map(TwinColumns::id)
        .findFirst()
        .orElse(columnId);
  }

  /** The widest joint and the least limit of the kinds that may lie there. */
  private static Joint joint(TwinColumns pair) {
    Capsule widest = pair.twins().get(0).strip();
    for (TwinShelf twin : pair.twins()) {
      widest = twin.strip().radius() > widest.radius() ? twin.strip() : widest;
    }
    OptionalLong each =
        pair.shelves().stream()
            .flatMap(shelf -> shelf.massLimit().stream())
            .mapToLong(Mass::grams)
            .min();
    return new Joint(widest, pair.twins().get(0).across(), each);
  }

  private LoadRequest request(List<Shelf> shelves) {
    Studio studio = asked.studio();
    Kiln kiln = studio.kiln(asked.firing().kilnId()).orElseThrow();
    Kiln changed = kiln.with(List.of(joined));
    Studio other =
        new Studio(
            studio.name(),
            studio.unit(),
            studio.forms(),
            studio.glazes(),
            List.of(changed),
            shelves,
            studio.posts(),
            studio.rules());
    return new LoadRequest(
        other,
        asked.batches(),
        asked.firing(),
        Optional.of(joined.id()),
        asked.day(),
        asked.seed(),
        asked.steps(),
        asked.kept().flatMap(kept -> KeptTogether.of(this, kept)));
  }

  private boolean keepsAll() {
    return asked.kept().isPresent() == request.kept().isPresent();
  }

  /** What was asked, with the joined shelves in the cupboard. */
  LoadRequest request() {
    return request;
  }

  /** What was asked. */
  LoadRequest asked() {
    return asked;
  }

  /** The plan with joined shelves. */
  ColumnPlan plan() {
    return joined;
  }

  /** The plan as the kiln has it. */
  ColumnPlan apart() {
    return plan;
  }

  List<TwinColumns> pairs() {
    return pairs;
  }

  /** The joint across a column's shelves; empty for a column that is not joined. */
  Optional<Joint> joint(String columnId) {
    return Optional.ofNullable(joints.get(columnId));
  }

  /** The kind of shelf of which two make up a joined one, or the shelf itself. */
  String half(String shelfId) {
    return Optional.ofNullable(halves.get(shelfId)).map(Shelf::id).orElse(shelfId);
  }

  /** The joined shelf that two of a kind make up in a column. */
  String whole(String columnId, String halfId) {
    TwinColumns pair = pair(columnId).orElseThrow();
    for (int k = 0; k < pair.shelves().size(); k++) {
      if (pair.shelves().get(k).id().equals(halfId)) {
        return whole(halfId, pair.twins().get(k).outline());
      }
    }
    throw new IllegalArgumentException("shelves " + halfId + " do not join in " + columnId);
  }

  private String whole(String halfId, ShelfOutline outline) {
    return wholes.stream()
        .filter(shelf -> shelf.outline().equals(outline) && half(shelf.id()).equals(halfId))
        .map(Shelf::id)
        .findFirst()
        .orElseThrow();
  }

  /** The pair that a joined column stands for. */
  Optional<TwinColumns> pair(String columnId) {
    return pairs.stream().filter(pair -> pair.id().equals(columnId)).findFirst();
  }
}
