package shelfful.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import shelfful.load.KeptSetting;
import shelfful.load.LayerPlace;
import shelfful.load.LeftOut;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.packing.BodyKind;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;
import shelfful.ware.KeptApart.Apartness;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/** Sorts the pieces of a request into kinds and lots. */
final class LotSorter {
  private static final long POINTS = 100;

  private final LoadRequest request;
  private final FiringDoor door;
  private final Map<KindKey, WareKind> kinds = new LinkedHashMap<>();
  private final Map<String, Integer> orders = new LinkedHashMap<>();
  private final Map<String, LayerPlace> kept = new HashMap<>();

  LotSorter(LoadRequest request) {
    this.request = request;
    this.door = new FiringDoor(request);
    request
        .kept()
        .map(KeptSetting::standing)
        .orElse(List.of())
        .forEach(pin -> kept.put(pin.pieceId(), pin.layer()));
  }

  /** What makes a kind; two pieces with equal keys are the same to the shelf. */
  private record KindKey(StandingWare ware, Length tolerance, Optional<String> gapGlaze) {}

  /**
   * What makes a lot: batch, part, and the make-up of the set its pieces belong to; for what stays
   * also its layer, and for a set of which something stays that very set.
   */
  private record LotKey(
      String batchId,
      Enum<?> part,
      Set<String> setMakeUp,
      Optional<LayerPlace> keptOn,
      Optional<String> keptSet) {
    /** Lots with the same answer make up sets of one kind. */
    List<Object> bundle() {
      return keptSet.isPresent() ? List.of(keptSet) : List.of(setMakeUp, keptOn);
    }

    Hold hold() {
      if (keptOn.isPresent()) {
        return Hold.KEPT;
      }
      return keptSet.isPresent() ? Hold.MATE : Hold.FREE;
    }
  }

  ReadyWare sort(Function<Piece, Optional<LeftOut>> alsoRefuses) {
    List<LeftOut> waiting = new ArrayList<>();
    List<Piece> ready = new ArrayList<>();
    Map<String, List<Piece>> setsWaiting = new LinkedHashMap<>();
    for (Piece piece : request.pieces()) {
      Optional<LeftOut> refusal = door.refuses(piece).or(() -> alsoRefuses.apply(piece));
      refusal.ifPresent(waiting::add);
      if (refusal.isPresent()) {
        setsWaiting.computeIfAbsent(piece.setKey(), key -> new ArrayList<>()).add(piece);
      } else {
        ready.add(piece);
      }
    }
    ready.removeIf(piece -> waitsForItsSet(piece, setsWaiting, waiting));
    return lots(ready, waiting);
  }

  private static boolean waitsForItsSet(
      Piece piece, Map<String, List<Piece>> setsWaiting, List<LeftOut> waiting) {
    List<Piece> others = setsWaiting.get(piece.setKey());
    if (others == null) {
      return false;
    }
    waiting.add(LeftOutSentences.setWaits(piece, others));
    return true;
  }

  private ReadyWare lots(List<Piece> ready, List<LeftOut> waiting) {
    Map<String, Set<String>> makeUps = new LinkedHashMap<>();
    for (Piece piece : ready) {
      makeUps
          .computeIfAbsent(piece.setKey(), key -> new TreeSet<>())
          .add(piece.batch().id() + "/" + piece.part());
    }
    Set<String> keptSets = keptSets(ready, makeUps);
    Map<LotKey, List<Piece>> sorted = new LinkedHashMap<>();
    for (Piece piece : ready) {
      LotKey key =
          new LotKey(
              piece.batch().id(),
              piece.part(),
              makeUps.get(piece.setKey()),
              Optional.ofNullable(kept.get(piece.id())),
              Optional.of(piece.setKey()).filter(keptSets::contains));
      sorted.computeIfAbsent(key, k -> new ArrayList<>()).add(piece);
    }
    Map<List<Object>, Integer> bundles = new LinkedHashMap<>();
    List<Lot> lots = new ArrayList<>();
    for (Map.Entry<LotKey, List<Piece>> entry : sorted.entrySet()) {
      int bundle = bundles.computeIfAbsent(entry.getKey().bundle(), key -> bundles.size());
      lots.add(lot(lots.size(), entry.getValue(), bundle, entry.getKey().hold()));
    }
    return new ReadyWare(List.copyOf(kinds.values()), lots, bundles.size(), waiting);
  }

  /** Sets of several pieces of which at least one stays. */
  private Set<String> keptSets(List<Piece> ready, Map<String, Set<String>> makeUps) {
    return ready.stream()
        .filter(piece -> kept.containsKey(piece.id()))
        .map(Piece::setKey)
        .filter(set -> makeUps.get(set).size() > 1)
        .collect(Collectors.toSet());
  }

  private Lot lot(int index, List<Piece> pieces, int bundle, Hold hold) {
    Piece first = pieces.get(0);
    Form form = door.form(first);
    Optional<Glaze> glaze = door.glaze(first);
    WareKind kind = kind(first);
    StandingWare ware = kind.ware();
    int order =
        first
            .batch()
            .order()
            .map(name -> orders.computeIfAbsent(name, key -> orders.size()))
            .orElse(-1);
    return new Lot(
        index,
        kind,
        pieces,
        worth(first),
        ware.height().plus(form.tolerance()).micrometres(),
        ware.mass().grams(),
        glaze.map(Glaze::id),
        glaze.map(Glaze::forbidden).orElse(Set.of()),
        glaze.map(Glaze::likes).orElse(Set.of()),
        bundle,
        order,
        hold);
  }

  private WareKind kind(Piece piece) {
    Form form = door.form(piece);
    Optional<String> gapGlaze = door.glaze(piece).filter(this::matters).map(Glaze::id);
    KindKey key = new KindKey(door.standing(piece), form.tolerance(), gapGlaze);
    return kinds.computeIfAbsent(key, k -> make(k, form.name()));
  }

  private WareKind make(KindKey key, String name) {
    boolean atAnyHeight = key.gapGlaze().filter(this::keepsDistance).isPresent();
    BodyKind body = WareTranslator.body(name, key.ware(), key.tolerance(), atAnyHeight);
    return new WareKind(kinds.size(), key.ware(), key.gapGlaze(), body, FootprintArea.of(body));
  }

  /**
   * Whether the shelf must know which glaze it is: it asks for a gap, or for a distance to another.
   */
  private boolean matters(Glaze glaze) {
    return glaze.gap().isPresent() || keepsDistance(glaze.id());
  }

  private boolean keepsDistance(String glazeId) {
    return request.studio().rules().keptApart().stream()
        .filter(rule -> rule.apartness() == Apartness.BY_DISTANCE)
        .anyMatch(rule -> isIn(rule, glazeId));
  }

  private static boolean isIn(KeptApart rule, String glazeId) {
    return rule.glazeId().equals(glazeId) || rule.otherGlazeId().equals(glazeId);
  }

  private long worth(Piece piece) {
    long points = POINTS * piece.batch().priority();
    if (request.day().isEmpty() || piece.batch().due().isEmpty()) {
      return points;
    }
    LocalDate soon = request.day().get().plusDays(request.studio().rules().dueSoonDays());
    return piece.batch().due().get().isAfter(soon) ? points : 2 * points;
  }
}
