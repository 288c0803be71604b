package shelfful.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shelfful.packing.Tables;

/** The sharper inequality of round rooms against the published record tables. */
class RoundRoomTest {
  private static final int TRIES = 60;

  @Test
  void holdsForTheRecordsOfEqualCirclesUnderAnyPrices() {
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) -> {
              RoundRoom room = new RoundRoom(0, 0, ratio);
              Random random = new Random(n);
              for (int i = 0; i < TRIES && n > 1; i++) {
                CellPrices prices = RandomPrices.of(random, 1);
                assertThat(n * room.share(1, 1, prices))
                    .as("%d under %s", n, prices)
                    .isLessThanOrEqualTo(room.room(prices));
              }
            });
  }

  @Test
  void holdsForThePackingsOfRadiiOneToN() {
    Tables.radiiOneTo()
        .forEach(
            (n, radius) -> {
              RoundRoom room = new RoundRoom(0, 0, radius);
              for (double tuned = 1; tuned <= n; tuned += 0.5) {
                CellPrices prices = room.tunedTo(tuned);
                double taken =
                    IntStream.rangeClosed(1, n).mapToDouble(r -> room.share(r, r, prices)).sum();
                assertThat(taken).as("to %d, %s", n, prices).isLessThanOrEqualTo(room.room(prices));
              }
            });
  }

  /** Seven in a circle of three radii: proven best (Graham 1968), and so says this bound. */
  @Test
  void provesSevenInACircleOfThreeRadii() {
    RoundRoom room = new RoundRoom(0, 0, 3);
    CellPrices prices = room.tunedTo(1);
    assertThat((int) (room.room(prices) / room.share(1, 1, prices))).isEqualTo(7);
  }

  /** It is never worse than Groemer's and Oler's bound by more than the search of prices misses. */
  @Test
  void isSharperThanGroemersBoundOnEveryRowOfTheTable() {
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) -> {
              if (ratio >= 3) {
                RoundRoom room = new RoundRoom(0, 0, ratio);
                CellPrices prices = room.tunedTo(1);
                double inner = ratio - 1;
                double groemer =
                    2 / Math.sqrt(3) * Math.PI * inner * inner / 4 + Math.PI * inner / 2 + 1;
                assertThat(room.room(prices) / room.share(1, 1, prices))
                    .as(n + " circles")
                    .isLessThan(groemer - 0.4);
              }
            });
  }

  @Test
  void provenRecordsAgreeWithTheTable() {
    Tables.circlesInCircle()
        .forEach(
            (n, ratio) -> {
              assertThat(ProvenRecords.most(ratio * 1.000001)).isGreaterThanOrEqualTo(n);
              if (n <= 13) {
                assertThat(ProvenRecords.most(ratio * 0.99999)).isLessThan(n);
              }
            });
  }
}
