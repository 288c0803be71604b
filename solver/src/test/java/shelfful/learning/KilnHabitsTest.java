package shelfful.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A year of records two hundred times over: is what was planted found, and nothing else? */
class KilnHabitsTest {
  private static final int REPETITIONS = 200;
  private static final List<Trait> ALL = List.of(Trait.values());

  /** Three standard errors of a rate over the repetitions. */
  private static double noise(double rate) {
    return 3 * Math.sqrt(rate * (1 - rate) / REPETITIONS);
  }

  private static CellRate topEdge(List<CellRate> rates) {
    return rates.stream()
        .filter(rate -> rate.trait() == Trait.PLACE && rate.cell().equals("top, edge"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void findsAPlantedHotZoneWithIntervalsThatHoldTheTruth() {
    int found = 0;
    int held = 0;
    for (int seed = 0; seed < REPETITIONS; seed++) {
      List<CellRate> rates =
          KilnHabits.of(YearOfRecords.withHotZone(seed), Flaw.SECOND_OR_LOST, ALL);
      CellRate place = topEdge(rates);
      found += place.verdict() == Verdict.WORSE ? 1 : 0;
      held += place.interval().holds(YearOfRecords.HOT) ? 1 : 0;
    }
    assertThat(found).as("found in %d years", REPETITIONS).isGreaterThanOrEqualTo(198);
    assertThat((double) held / REPETITIONS)
        .isGreaterThan(KilnHabits.CONFIDENCE - noise(KilnHabits.CONFIDENCE));
  }

  @Test
  void raisesNoMoreFalseAlarmsThanItSays() {
    int alarms = 0;
    int compared = 0;
    for (int seed = 0; seed < REPETITIONS; seed++) {
      List<CellRate> rates =
          KilnHabits.of(YearOfRecords.even(10_000 + seed), Flaw.SECOND_OR_LOST, ALL);
      compared += (int) rates.stream().filter(r -> r.verdict() != Verdict.TOO_FEW).count();
      alarms +=
          rates.stream()
                  .anyMatch(r -> r.verdict() == Verdict.WORSE || r.verdict() == Verdict.BETTER)
              ? 1
              : 0;
    }
    assertThat(compared).as("cells compared").isGreaterThan(30 * REPETITIONS);
    assertThat((double) alarms / REPETITIONS)
        .isLessThanOrEqualTo(KilnHabits.ALARM_LEVEL + noise(KilnHabits.ALARM_LEVEL));
  }

  @Test
  void saysTooFewYetOfAFewFirings() {
    List<Sighting> few = YearOfRecords.withHotZone(1).subList(0, 60);
    assertThat(KilnHabits.of(few, Flaw.SECOND_OR_LOST, ALL))
        .isNotEmpty()
        .allMatch(rate -> rate.verdict() == Verdict.TOO_FEW);
  }

  @Test
  void doesNotHoldABadFiringAgainstAGlazeThatWasOnlyInIt() {
    List<Sighting> year = new java.util.ArrayList<>(YearOfRecords.even(3));
    java.util.SplittableRandom chance = new java.util.SplittableRandom(5);
    for (int piece = 0; piece < 200; piece++) {
      Sighting like = year.get(piece);
      shelfful.record.FiredPiece is = like.piece();
      year.add(
          new Sighting(
              "bad",
              "kiln",
              new shelfful.record.FiredPiece(
                  "B" + piece,
                  is.formId(),
                  java.util.Optional.of(piece < 100 ? "rare" : "glaze-1"),
                  is.layerId(),
                  is.zone(),
                  is.ring()),
              chance.nextDouble() < 0.5 ? shelfful.record.Grade.LOST : shelfful.record.Grade.GOOD));
    }
    CellRate rare =
        KilnHabits.of(year, Flaw.SECOND_OR_LOST, List.of(Trait.GLAZE)).stream()
            .filter(rate -> rate.cell().equals("rare"))
            .findFirst()
            .orElseThrow();
    assertThat(rare.proportion().rate()).isGreaterThan(0.4);
    assertThat(rare.verdict()).isEqualTo(Verdict.LIKE_THE_REST);
  }
}
