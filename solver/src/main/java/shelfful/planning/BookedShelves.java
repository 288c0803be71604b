package shelfful.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.packing.Effort;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.planning.ShelfBook.Body;
import shelfful.planning.ShelfBook.Content;
import shelfful.planning.ShelfBook.Place;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.ware.FiringKind;

/** A shelf book as one load sees it: in the kinds of its own ware, and no more than there is. */
final class BookedShelves {
  /** A content of which less than this share is on the list says little. */
  private static final double ENOUGH = 0.5;

  private final ShelfBook book;
  private final FiringKind firing;
  private final int[] wareOf;
  private final int[] most;
  private final Map<Integer, Integer> kindOf = new HashMap<>();

  BookedShelves(ShelfBook book, FiringKind firing, ReadyWare ware) {
    this.book = book;
    this.firing = firing;
    this.wareOf = new int[ware.kinds().size()];
    this.most = new int[wareOf.length];
    for (WareKind kind : ware.kinds()) {
      int number =
          book.number(new ShelfBook.Ware(kind.ware(), kind.body().tolerance(), kind.glazeId()));
      wareOf[kind.index()] = number;
      kindOf.put(number, kind.index());
    }
    ware.lots().forEach(lot -> most[lot.kind().index()] += lot.size());
  }

  /**
   * What fits.
   *
   * @param counts by kind
   */
  record Known(int[] counts, Packed setting) {}

  /** What of the ware of this load is known to fit. */
  List<Known> fitting(NumberedSpace space) {
    List<Known> known = new ArrayList<>();
    for (Content content : book.contents(place(space))) {
      known(content).ifPresent(known::add);
    }
    return known;
  }

  private Optional<Known> known(Content content) {
    int[] counts = new int[wareOf.length];
    List<Placed> bodies = new ArrayList<>();
    for (Body body : content.bodies()) {
      Integer kind = kindOf.get(body.ware());
      if (kind != null && counts[kind] < most[kind]) {
        counts[kind]++;
        bodies.add(new Placed(kind, body.pose()));
      }
    }
    if (bodies.size() < ENOUGH * content.bodies().size()) {
      return Optional.empty();
    }
    bodies.sort(Comparator.comparingInt(Placed::kind));
    return Optional.of(new Known(counts, new Packed(bodies, content.spare())));
  }

  /** What no setting was found for with an effort, by kind. */
  List<int[]> refused(NumberedSpace space, Effort effort) {
    List<int[]> refused = new ArrayList<>();
    for (Map<Integer, Integer> counts : book.refused(place(space), effort)) {
      int[] kinds = new int[wareOf.length];
      boolean isThere = true;
      for (Map.Entry<Integer, Integer> one : counts.entrySet()) {
        Integer kind = kindOf.get(one.getKey());
        isThere &= kind != null && one.getValue() <= most[kind];
        if (isThere) {
          kinds[kind] = one.getValue();
        }
      }
      if (isThere) {
        refused.add(kinds);
      }
    }
    return refused;
  }

  /** Writes down what was found to fit. */
  void fits(NumberedSpace space, List<Known> found) {
    book.fits(place(space), found.stream().map(this::content).toList());
  }

  private Content content(Known known) {
    List<Body> bodies =
        known.setting().bodies().stream()
            .map(body -> new Body(wareOf[body.kind()], body.pose()))
            .toList();
    return new Content(byWare(known.counts()), bodies, known.setting().spare());
  }

  /** Writes down what no setting was found for with an effort. */
  void refuse(NumberedSpace space, Effort effort, List<int[]> found) {
    book.refuse(place(space), effort, found.stream().map(this::byWare).toList());
  }

  private Map<Integer, Integer> byWare(int[] counts) {
    Map<Integer, Integer> byWare = new HashMap<>();
    for (int kind = 0; kind < counts.length; kind++) {
      if (counts[kind] > 0) {
        byWare.put(wareOf[kind], counts[kind]);
      }
    }
    return byWare;
  }

  private Place place(NumberedSpace space) {
    return new Place(firing, space.text());
  }
}
