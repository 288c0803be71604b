package shelfful.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Rates of flawed pieces, cell by cell, with what may be said of each.
 *
 * <p>A cell is compared only when it holds enough pieces ({@link Proportion#FEWEST}), and when the
 * variance of what would be expected of it is at least {@value #LEAST_VARIANCE}, from which on the
 * normal distribution is used. All cells of one look are one family: the chance of even one false
 * alarm in it is at most the level given.
 */
public final class KilnHabits {
  /** Chance of a false alarm in one look at all cells. */
  public static final double ALARM_LEVEL = 0.05;

  /** Confidence of the intervals shown. */
  public static final double CONFIDENCE = 0.95;

  /** Mantel and Haenszel's test is used from this variance on: common practice. */
  static final double LEAST_VARIANCE = 5;

  private final List<Sighting> sightings;
  private final Flaw flaw;

  private KilnHabits(List<Sighting> sightings, Flaw flaw) {
    this.sightings = sightings;
    this.flaw = flaw;
  }

  /**
   * One look at the records: every cell of every trait, sorted by trait and name.
   *
   * @param sightings of one kiln; those of different kilns are better not mixed
   * @param traits to look at; the more, the larger a difference must be to be told
   */
  public static List<CellRate> of(List<Sighting> sightings, Flaw flaw, List<Trait> traits) {
    return new KilnHabits(sightings, flaw).rates(traits);
  }

  private record Cell(Trait trait, String name) {}

  private List<CellRate> rates(List<Trait> traits) {
    List<Cell> cells = new ArrayList<>();
    List<Map<String, Proportion[]>> counted = new ArrayList<>();
    for (Trait trait : traits) {
      sightings.stream()
          .map(trait::cell)
          .distinct()
          .sorted()
          .map(name -> new Cell(trait, name))
          .forEach(
              cell -> {
                cells.add(cell);
                counted.add(byFiring(cell));
              });
    }
    List<StratifiedTest> tests = counted.stream().map(KilnHabits::test).toList();
    double[] chances = chances(counted, tests);
    List<CellRate> rates = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      rates.add(rate(cells.get(i), counted.get(i), tests.get(i), chances[i]));
    }
    return List.copyOf(rates);
  }

  /** Cell and rest, firing by firing. */
  private Map<String, Proportion[]> byFiring(Cell cell) {
    Map<String, Proportion[]> firings = new LinkedHashMap<>();
    for (Sighting one : sightings) {
      if (!cell.trait().compares(one, cell.name())) {
        continue;
      }
      Proportion[] both =
          firings.computeIfAbsent(
              one.firingId(),
              fresh -> new Proportion[] {new Proportion(0, 0), new Proportion(0, 0)});
      int side = cell.trait().cell(one).equals(cell.name()) ? 0 : 1;
      both[side] = both[side].plus(flaw.isOn(one.grade()));
    }
    return firings;
  }

  private static StratifiedTest test(Map<String, Proportion[]> firings) {
    StratifiedTest test = new StratifiedTest();
    firings.values().forEach(both -> test.add(both[0], both[1]));
    return test;
  }

  private static Proportion sum(Map<String, Proportion[]> firings, int side) {
    int flawed = firings.values().stream().mapToInt(both -> both[side].flawed()).sum();
    int of = firings.values().stream().mapToInt(both -> both[side].of()).sum();
    return new Proportion(flawed, of);
  }

  private static boolean isCompared(Map<String, Proportion[]> firings, StratifiedTest test) {
    return !sum(firings, 0).isTooFew()
        && !sum(firings, 1).isTooFew()
        && test.variance() >= LEAST_VARIANCE;
  }

  /** Allowing for how many are compared; 1 for those that are not. */
  private static double[] chances(
      List<Map<String, Proportion[]>> counted, List<StratifiedTest> tests) {
    Map<Integer, Double> compared = new TreeMap<>();
    for (int i = 0; i < tests.size(); i++) {
      if (isCompared(counted.get(i), tests.get(i))) {
        compared.put(i, tests.get(i).chance());
      }
    }
    double[] adjusted =
        Holm.adjusted(compared.values().stream().mapToDouble(Double::doubleValue).toArray());
    double[] chances = new double[tests.size()];
    java.util.Arrays.fill(chances, 1);
    int next = 0;
    for (int i : compared.keySet()) {
      chances[i] = adjusted[next++];
    }
    return chances;
  }

  private static CellRate rate(
      Cell cell, Map<String, Proportion[]> firings, StratifiedTest test, double chance) {
    Proportion here = sum(firings, 0);
    Verdict verdict = Verdict.LIKE_THE_REST;
    if (!isCompared(firings, test)) {
      verdict = Verdict.TOO_FEW;
    } else if (chance <= ALARM_LEVEL) {
      verdict = test.isWorse() ? Verdict.WORSE : Verdict.BETTER;
    }
    return new CellRate(
        cell.trait(), cell.name(), here, here.wilson(CONFIDENCE), sum(firings, 1), verdict, chance);
  }
}
