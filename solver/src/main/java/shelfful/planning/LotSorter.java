package shelfful.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
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
import shelfful.load.PinnedPiece;
import shelfful.measure.Length;
import shelfful.planning.Tower.Storey;
import shelfful.ware.Batch;
import shelfful.ware.Form;
import shelfful.ware.Glaze;
import shelfful.ware.Piece;
import shelfful.ware.StandingWare;

/** Sorts the pieces of a request into kinds and lots. */
final class LotSorter {
  private static final long POINTS = 100;

  private final LoadRequest request;
  private final FiringDoor door;
  private final KindTable kinds;
  private final Map<String, Integer> orders = new LinkedHashMap<>();
  private final Map<String, PinnedPiece> kept = new HashMap<>();
  private final TowerMaker towers;

  LotSorter(LoadRequest request) {
    this.request = request;
    this.door = new FiringDoor(request);
    this.towers = new TowerMaker(request);
    this.kinds = new KindTable(request, door, kept);
    request
        .kept()
        .map(KeptSetting::standing)
        .orElse(List.of())
        .forEach(pin -> kept.put(pin.pieceId(), pin));
  }

  /** Where a piece is kept, and how it lies there: what is kept in one lot must be one body. */
  private record KeptOn(LayerPlace layer, Length lift, boolean upsideDown, Length tolerances) {}

  private Optional<KeptOn> keptOn(Piece piece) {
    return Optional.ofNullable(kept.get(piece.id()))
        .map(
            pin ->
                new KeptOn(
                    pin.layer(), pin.rest().lift(), pin.rest().upsideDown(), tolerances(piece)));
  }

  /**
   * What makes a lot: batch, part, and the make-up of the set its pieces belong to; for what stays
   * also its layer, and for a set of which something stays that very set. Pots that may be piled
   * are of one lot whatever their batch, as long as nothing but the batch tells them apart.
   */
  private record LotKey(
      String source,
      Enum<?> part,
      Set<String> setMakeUp,
      Optional<KeptOn> keptOn,
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
      Set<String> makeUp = makeUps.get(piece.setKey());
      boolean piles = mayPile(piece, makeUp);
      LotKey key =
          new LotKey(
              piles ? pilesWith(piece) : piece.batch().id(),
              piece.part(),
              piles ? Set.of(pilesWith(piece)) : makeUp,
              keptOn(piece),
              Optional.of(piece.setKey()).filter(keptSets::contains));
      sorted.computeIfAbsent(key, k -> new ArrayList<>()).add(piece);
    }
    Map<List<Object>, Integer> bundles = new LinkedHashMap<>();
    List<Lot> lots = new ArrayList<>();
    for (Map.Entry<LotKey, List<Piece>> entry : sorted.entrySet()) {
      int bundle = bundles.computeIfAbsent(entry.getKey().bundle(), key -> bundles.size());
      lots.add(lot(lots.size(), entry.getValue(), bundle, entry.getKey().hold()));
    }
    int singles = lots.size();
    List<Lot> piling =
        lots.stream()
            .filter(lot -> mayPile(lot.pieces().get(0), makeUps.get(lot.pieces().get(0).setKey())))
            .toList();
    for (Tower tower : towers.towers(piling)) {
      add(lots, tower);
    }
    Shares shares = new Shares(lots, singles);
    return new ReadyWare(kinds.all(), lots, bundles.size(), waiting, shares);
  }

  /** Pieces that may wait apart from others and be set with any of their form. */
  private boolean mayPile(Piece piece, Set<String> makeUp) {
    return makeUp.size() == 1 && !kept.containsKey(piece.id()) && towers.mayPile(piece);
  }

  /** What two pieces must have in common to be in one pile without a difference to anything. */
  private String pilesWith(Piece piece) {
    Batch batch = piece.batch();
    return String.join(
        "/",
        "form",
        batch.formId(),
        String.valueOf(worth(piece)),
        String.valueOf(batch.mustGo()),
        batch.order().orElse(""));
  }

  /** Two ways that come to the same body of the same pieces are one way. */
  private void add(List<Lot> lots, Tower tower) {
    Storey lowest = tower.storeys().get(0);
    Lot first = lowest.lot();
    WareKind kind = kinds.kind(tower);
    boolean known =
        lots.stream()
            .filter(lot -> lot.kind() == kind)
            .flatMap(lot -> lot.tower().stream())
            .anyMatch(other -> other.lots().equals(tower.lots()));
    if (!known) {
      lots.add(
          new Lot(
              lots.size(),
              kind,
              List.of(),
              tower.worth(),
              tower.height().micrometres(),
              kind.ware().mass().grams(),
              Optional.empty(),
              Set.of(),
              Set.of(),
              first.bundle(),
              first.order(),
              Hold.FREE,
              Optional.of(tower)));
    }
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
    WareKind kind = kinds.kind(first);
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
        ware.height().plus(tolerances(first)).micrometres(),
        ware.mass().grams(),
        glaze.map(Glaze::id),
        glaze.map(Glaze::forbidden).orElse(Set.of()),
        glaze.map(Glaze::likes).orElse(Set.of()),
        bundle,
        order,
        hold,
        Optional.empty());
  }

  /** For the height: that of a kept piece in a pile adds up with those that carry it. */
  private Length tolerances(Piece piece) {
    Length sum = door.form(piece).tolerance();
    Set<String> seen = new HashSet<>(Set.of(piece.id()));
    PinnedPiece pin = kept.get(piece.id());
    while (pin != null && pin.rest().on().filter(seen::add).isPresent()) {
      String on = pin.rest().on().get();
      Optional<Piece> carrier =
          request.pieces().stream().filter(other -> other.id().equals(on)).findFirst();
      sum = carrier.map(door::form).map(Form::tolerance).map(sum::plus).orElse(sum);
      pin = kept.get(on);
    }
    return sum;
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
