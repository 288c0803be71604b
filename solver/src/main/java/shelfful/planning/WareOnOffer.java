package shelfful.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.load.LoadRequest;
import shelfful.measure.Length;
import shelfful.packing.BodyKind;
import shelfful.ware.FiringKind;
import shelfful.ware.Glaze;
import shelfful.ware.Zone;

/**
 * What of a list may go into its firing, as the proofs about whole loads need it: exact sizes
 * without any allowance for rounding, and only the rules that the judge of finished loads applies
 * to every setting.
 *
 * @param offers pieces that are alike in everything a proof looks at, counted
 */
public record WareOnOffer(List<Offer> offers) {
  /** Takes its own copy. */
  public WareOnOffer {
    offers = List.copyOf(offers);
  }

  /**
   * Pieces that are alike.
   *
   * @param body its parts at the heights where they really are
   * @param gap that it asks for on its own, tolerance not counted; two pieces keep the larger of
   *     their gaps
   * @param grams of one piece, with lid and catcher
   * @param worth of one piece, in the points that planning counts
   * @param forbidden zones it must not be in
   * @param leastVolume that it has to itself however it is set, in cubic millimetres
   * @param count how many there are
   */
  public record Offer(
      BodyKind body,
      Length gap,
      long grams,
      long worth,
      Set<Zone> forbidden,
      double leastVolume,
      int count) {}

  /** Whether pieces of a request may rest on or in each other. */
  public static boolean mayPile(LoadRequest request) {
    return TowerMaker.mayPile(request);
  }

  /** Sorts the pieces of a request; pieces that wait by rule, and sets with such, are left out. */
  public static WareOnOffer of(LoadRequest request) {
    ReadyWare ready = new LotSorter(request).sort(piece -> Optional.empty());
    Map<Offer, Integer> counted = new LinkedHashMap<>();
    for (Lot lot : ready.singles()) {
      counted.merge(one(request, lot), lot.size(), Integer::sum);
    }
    List<Offer> offers = new ArrayList<>();
    counted.forEach(
        (offer, count) ->
            offers.add(
                new Offer(
                    offer.body(),
                    offer.gap(),
                    offer.grams(),
                    offer.worth(),
                    offer.forbidden(),
                    offer.leastVolume(),
                    count)));
    return new WareOnOffer(offers);
  }

  private static Offer one(LoadRequest request, Lot lot) {
    Length tolerance = new Length(lot.height() - lot.kind().ware().height().micrometres());
    BodyKind body =
        WareTranslator.body(lot.kind().body().name(), lot.kind().ware(), tolerance, false);
    double volume = new LeastVolume(request).of(lot.pieces().get(0));
    return new Offer(body, gap(request, lot), lot.grams(), lot.worth(), lot.forbidden(), volume, 1);
  }

  private static Length gap(LoadRequest request, Lot lot) {
    if (request.firing().kind() == FiringKind.BISQUE) {
      return request.studio().rules().clearances().bisqueToBisque();
    }
    Length own =
        lot.glazeId().flatMap(request.studio()::glaze).flatMap(Glaze::gap).orElse(Length.ZERO);
    return Length.longer(own, request.studio().rules().clearances().glazedToGlazed());
  }
}
