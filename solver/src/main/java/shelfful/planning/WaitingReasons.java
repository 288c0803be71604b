package shelfful.planning;

import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shelfful.load.LeftOut;
import shelfful.load.LeftOut.Reason;
import shelfful.measure.Length;
import shelfful.measure.LengthText;
import shelfful.measure.LengthUnit;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Piece;

/** Why ready pieces did not come in, with figures from the finished stack. */
final class WaitingReasons {
  private final SketchJudge judge;

  WaitingReasons(SketchJudge judge) {
    this.judge = judge;
  }

  List<LeftOut> of(Sketch sketch, Stacking stacking, List<Deque<Piece>> remaining) {
    List<LeftOut> out = new ArrayList<>();
    int[] placed = sketch.placed();
    double shelvesShort = shelvesShort(placed);
    for (Lot lot : judge.ware().singles()) {
      for (Piece piece : remaining.get(lot.index())) {
        out.add(
            keptApart(lot, piece, placed)
                .or(() -> setWaits(lot, piece))
                .orElseGet(() -> noRoom(lot, piece, sketch, stacking, shelvesShort)));
      }
    }
    return out;
  }

  private Optional<LeftOut> keptApart(Lot lot, Piece piece, int[] placed) {
    for (Lot other : judge.ware().lots()) {
      boolean clash = judge.apart().inFiring(lot.index(), other.index());
      if (clash && placed[other.index()] > 0) {
        String sentence =
            String.format(
                Locale.ROOT,
                "Its glaze %s may not be in one firing with %s, of which %d are in.",
                glazeName(lot),
                glazeName(other),
                placed[other.index()]);
        return Optional.of(
            new LeftOut(
                piece.id(),
                Reason.KEPT_APART,
                sentence,
                "Fire it in a load without " + glazeName(other) + "."));
      }
    }
    return Optional.empty();
  }

  /** Of a set that found no room the largest piece says so; the others wait for it. */
  private Optional<LeftOut> setWaits(Lot lot, Piece piece) {
    Lot largest = lot;
    for (Lot other : judge.ware().singles()) {
      if (other.bundle() == lot.bundle() && other.kind().area() > largest.kind().area()) {
        largest = other;
      }
    }
    if (largest == lot) {
      return Optional.empty();
    }
    Piece other = largest.pieces().get(lot.pieces().indexOf(piece));
    return Optional.of(LeftOutSentences.setWaits(piece, List.of(other)));
  }

  private String glazeName(Lot lot) {
    return lot.glazeId()
        .flatMap(judge.stand().request().studio()::glaze)
        .map(glaze -> glaze.name())
        .orElse("");
  }

  private LeftOut noRoom(
      Lot lot, Piece piece, Sketch sketch, Stacking stacking, double shelvesShort) {
    int layersTallEnough = 0;
    long tallestRoom = 0;
    for (int c = 0; c < sketch.columns(); c++) {
      for (int l = 0; l < sketch.levels(c); l++) {
        LevelStand level = stacking.level(c, l);
        tallestRoom = Math.max(tallestRoom, level.room());
        for (Spot spot : judge.stand().spotsOf(c)) {
          layersTallEnough += level.room() >= lot.height() ? judge.stand().shelvesAt(spot) : 0;
        }
      }
    }
    String height = text(lot.height());
    if (tallestRoom == 0) {
      return emptyKiln(piece, height);
    }
    String where = where(layersTallEnough, height, text(tallestRoom));
    String sentence =
        String.format(
            Locale.ROOT,
            "It would fit alone, but %s. All that waits needs about %.1f more shelves.",
            where,
            shelvesShort);
    return new LeftOut(
        piece.id(), Reason.NO_ROOM, sentence, "Fire it next, or mark it must-go to put it first.");
  }

  /** Nothing is in: then it cannot be said that the room went to others, or that it would fit. */
  private static LeftOut emptyKiln(Piece piece, String height) {
    return new LeftOut(
        piece.id(),
        Reason.NO_ROOM,
        "No place was found for it ("
            + height
            + " tall) even in the empty kiln: posts, keep-outs, zones or the shelves beside leave"
            + " too little.",
        "Try another column plan, or look whether a clearance is larger than it need be.");
  }

  private static String where(int layersTallEnough, String height, String highest) {
    if (layersTallEnough == 0) {
      return String.format(
          Locale.ROOT, "no layer is as high as it needs (%s; the highest has %s)", height, highest);
    }
    if (layersTallEnough == 1) {
      return String.format(
          Locale.ROOT, "the only layer that is high enough (%s) takes no more", height);
    }
    return String.format(
        Locale.ROOT,
        "none of the %d layers that are high enough (%s) takes one more",
        layersTallEnough,
        height);
  }

  private String text(long micrometres) {
    LengthUnit unit = judge.stand().request().studio().unit();
    return LengthText.write(new Length(micrometres), unit);
  }

  /** How many shelves the waiting pieces would about cover, at the density of well-set ware. */
  private double shelvesShort(int[] placed) {
    double area = 0;
    int[] pieces = judge.ware().shares().pieces(placed);
    for (Lot lot : judge.ware().singles()) {
      area += (lot.size() - pieces[lot.index()]) * leastArea(lot);
    }
    double shelf =
        judge.stand().spots().stream()
            .filter(spot -> !spot.shelves().isEmpty())
            .mapToDouble(this::shelfArea)
            .max()
            .orElse(1);
    double wellSet = 0.65;
    return Math.max(0.1, area / (wellSet * shelf));
  }

  private double shelfArea(Spot spot) {
    double area = KilnRegions.shelf(spot.shelves().get(0).outline()).area();
    return area / judge.stand().shelvesAt(spot);
  }

  /** What a piece of a lot covers, its share of the closest pile where it may be piled. */
  private double leastArea(Lot single) {
    double least = single.kind().area();
    for (Lot lot : judge.ware().lots()) {
      if (lot.tower().filter(tower -> tower.takes(single) > 0).isPresent()) {
        least = Math.min(least, lot.kind().area() / lot.tower().get().size());
      }
    }
    return least;
  }
}
