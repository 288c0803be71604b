package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shelfful.packing.Effort;
import shelfful.packing.Packed;
import shelfful.packing.Placed;
import shelfful.planning.ShelfSpaces.NumberedSpace;
import shelfful.planning.Stacking.LevelStand;
import shelfful.ware.Zone;

/**
 * Everything the rules say of a sketch, derived from it alone. (The finished load is judged again,
 * by other code, in {@code inspect}.)
 */
final class SketchJudge {
  private static final int REMEMBERED = 5000;

  private final Stand stand;
  private final ReadyWare ware;
  private final Staying staying;
  private final StackFitter fitter;
  private final ShelfSpaces spaces;
  private final ShelfAnswers answers;
  private final KeptApartPairs apart;
  private final HeightClasses classes;
  private final MetLayers met;
  private final List<NumberedSpace> spacesRead = new ArrayList<>();
  private Optional<BookedShelves> booked = Optional.empty();
  private final Map<Sketch, Evaluation> remembered =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Sketch, Evaluation> eldest) {
          return size() > REMEMBERED;
        }
      };

  SketchJudge(Stand stand, ReadyWare ware, ShelfSpaces spaces, ShelfAnswers answers) {
    this.stand = stand;
    this.ware = ware;
    this.spaces = spaces;
    this.answers = answers;
    this.staying = new Staying(stand, ware);
    Footing footing =
        staying.isNothing() ? Footing.FREE : new Foothold(stand, ware, staying, spaces);
    this.fitter = new StackFitter(stand, stand.cupboard(), staying.locked(), footing);
    this.apart = new KeptApartPairs(stand.request(), ware.lots());
    this.classes = new HeightClasses(ware);
    this.met = new MetLayers(stand.spots().size(), classes);
  }

  /** From now on asks the packer to try this hard, and forgets what was refused with less. */
  void tryHarder(Effort harder) {
    writeRefused();
    answers.tryHarder(harder);
    booked.ifPresent(
        book ->
            spacesRead.forEach(
                space -> answers.refuse(space, book.refused(space, answers.effort()))));
    remembered.clear();
  }

  Stand stand() {
    return stand;
  }

  ReadyWare ware() {
    return ware;
  }

  /** What stays where it is. */
  Staying staying() {
    return staying;
  }

  ShelfSpaces spaces() {
    return spaces;
  }

  ShelfAnswers answers() {
    return answers;
  }

  KeptApartPairs apart() {
    return apart;
  }

  Optional<Stacking> stack(StackNeeds needs) {
    return fitter.fit(needs);
  }

  /**
   * Judges a sketch without empty levels; remembers the answer, so the sketch must not change
   * afterwards.
   */
  Evaluation judge(Sketch sketch) {
    Evaluation known = remembered.get(sketch);
    if (known == null) {
      known = derive(sketch);
      remembered.put(sketch, known);
    }
    return known;
  }

  private Evaluation derive(Sketch sketch) {
    int[] placed = sketch.placed();
    int firing = apart.pairsInFiring(placed);
    int split = setsSplit(placed);
    Optional<Stacking> stacking = fitter.fit(StackNeeds.of(sketch, ware.lots()));
    if (stacking.isEmpty()) {
      return new Evaluation(stacking, 1, 0, 0, firing, 0, split, 0);
    }
    int tooMuch = 0;
    int together = firing;
    int forbidden = 0;
    int notLiked = 0;
    for (Spot spot : stand.spots()) {
      for (int l = 0; l < sketch.levels(spot.column()); l++) {
        int[] counts = sketch.counts(spot.column(), l, spot.place());
        LevelStand level = stacking.get().level(spot.column(), l);
        tooMuch += packed(spot, level, counts, null) == null ? 1 : 0;
        together += apart.pairsOnLayer(counts);
        Zone zone = zone(level);
        for (int lot = 0; lot < counts.length; lot++) {
          Lot pieces = ware.lots().get(lot);
          forbidden += pieces.forbidden().contains(zone) ? counts[lot] : 0;
          boolean liked = pieces.liked().isEmpty() || pieces.liked().contains(zone);
          notLiked += liked ? 0 : counts[lot];
        }
      }
    }
    int overloaded = stacking.get().overloaded();
    return new Evaluation(stacking, 0, tooMuch, overloaded, together, forbidden, split, notLiked);
  }

  /** The setting of a shelf's counts, or null when it holds too much. */
  Packed packed(Spot spot, LevelStand level, int[] lotCounts, Packed near) {
    NumberedSpace space = asked(spot, level, lotCounts);
    int[] kinds = movable(lotCounts);
    Packed found = answers.ask(space, kinds, near);
    if (found != null && staying.isNothing()) {
      met(spot, level, space, kinds, found);
    }
    return found;
  }

  /** The setting of so many of each kind where nothing stays, or null when it is too much. */
  Packed packedKinds(Spot spot, LevelStand level, int[] kinds, Packed near) {
    NumberedSpace space = space(spot, level, classes.height(classes.of(kinds)));
    Packed found = answers.ask(space, kinds, near);
    if (found != null) {
      met(spot, level, space, kinds, found);
    }
    return found;
  }

  private void met(Spot spot, LevelStand level, NumberedSpace space, int[] kinds, Packed found) {
    if (!found.bodies().isEmpty()) {
      if (booked.isPresent() && met.isNew(space)) {
        read(booked.get(), space);
      }
      met.met(spot, level.postsOn().isEmpty(), space, kinds);
    }
  }

  /** Has what is known of shelves read in a book, and what is found written there. */
  void with(BookedShelves book) {
    booked = Optional.of(book);
  }

  private void read(BookedShelves book, NumberedSpace space) {
    spacesRead.add(space);
    answers.refuse(space, book.refused(space, answers.effort()));
    for (BookedShelves.Known known : book.fitting(space)) {
      if (answers.takesOver(space, known)) {
        met.fits(space, known.counts());
      }
    }
  }

  /** Writes down what was found since it was read. */
  void writeDown() {
    booked.ifPresent(book -> spacesRead.forEach(space -> book.fits(space, answers.fullest(space))));
    writeRefused();
  }

  private void writeRefused() {
    booked.ifPresent(
        book ->
            spacesRead.forEach(
                space -> book.refuse(space, answers.effort(), answers.refusedSince(space))));
  }

  HeightClasses classes() {
    return classes;
  }

  /** Every content found to fit so far. */
  MetLayers met() {
    return met;
  }

  /** The space that some counts are asked about: what stays stands in it already. */
  NumberedSpace asked(Spot spot, LevelStand level, int[] lotCounts) {
    NumberedSpace bare = space(spot, level, tallest(lotCounts));
    List<Integer> kept = staying.isNothing() ? List.of() : staying.keptOf(lotCounts);
    if (kept.isEmpty()) {
      return bare;
    }
    List<Placed> fixed = kept.stream().flatMap(lot -> staying.bodies(lot).stream()).toList();
    int[] kinds = new int[ware.kinds().size()];
    fixed.forEach(body -> kinds[body.kind()]++);
    return spaces.around(bare, kept, fixed, answers.covered(kinds));
  }

  /** By kind, how many of some counts may be moved about. */
  int[] movable(int[] lotCounts) {
    int[] kinds = byKind(lotCounts);
    if (!staying.isNothing()) {
      for (int lot : staying.keptOf(lotCounts)) {
        kinds[ware.lots().get(lot).kind().index()] -= lotCounts[lot];
      }
    }
    return kinds;
  }

  /**
   * Takes over every setting another judge of the same column plan has found; both must use the
   * same spaces.
   */
  void learnFrom(SketchJudge other) {
    answers.learnFrom(other.answers);
    met.learnFrom(other.met);
  }

  /**
   * Takes over the settings of another judge of the same column plan for every shelf of a sketch.
   */
  void learn(Sketch sketch, SketchJudge other) {
    Optional<Stacking> stacking = fitter.fit(StackNeeds.of(sketch, ware.lots()));
    if (stacking.isEmpty()) {
      return;
    }
    for (Spot spot : stand.spots()) {
      for (int l = 0; l < sketch.levels(spot.column()); l++) {
        LevelStand level = stacking.get().level(spot.column(), l);
        int[] counts = sketch.counts(spot.column(), l, spot.place());
        Packed known = other.packed(spot, level, counts, null);
        if (known != null) {
          answers.learn(asked(spot, level, counts), movable(counts), known);
        }
      }
    }
  }

  NumberedSpace space(Spot spot, LevelStand level, long tallest) {
    return spaces.space(spot, level.postsOn(), level.z(), tallest);
  }

  /** Whether nothing is built over a level. */
  boolean isOnTop(Sketch sketch, int column, int level) {
    return level == sketch.levels(column) - 1
        && stand.above(column).stream().allMatch(upper -> sketch.levels(upper) == 0);
  }

  long tallest(int[] lotCounts) {
    long tallest = 0;
    for (int lot = 0; lot < lotCounts.length; lot++) {
      if (lotCounts[lot] > 0) {
        tallest = Math.max(tallest, ware.lots().get(lot).height());
      }
    }
    return tallest;
  }

  int[] byKind(int[] lotCounts) {
    int[] kinds = new int[ware.kinds().size()];
    for (int lot = 0; lot < lotCounts.length; lot++) {
      kinds[ware.lots().get(lot).kind().index()] += lotCounts[lot];
    }
    return kinds;
  }

  Zone zone(LevelStand level) {
    return Zones.of(stand, level);
  }

  /** How many pieces are in beyond what the scarcest lot of their bundle allows. */
  int setsSplit(int[] placed) {
    int[] least = leastOfBundles(placed);
    int[] pieces = ware.shares().pieces(placed);
    int split = 0;
    for (Lot lot : ware.singles()) {
      split += pieces[lot.index()] - least[lot.bundle()];
    }
    return split;
  }

  /** For each bundle how many whole sets are in. */
  int[] leastOfBundles(int[] placed) {
    int[] least = new int[ware.bundles()];
    int[] pieces = ware.shares().pieces(placed);
    Arrays.fill(least, Integer.MAX_VALUE);
    for (Lot lot : ware.singles()) {
      least[lot.bundle()] = Math.min(least[lot.bundle()], pieces[lot.index()]);
    }
    return least;
  }
}
