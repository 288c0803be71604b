package shelfful.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoomFactorsTest {
  private static final int FORMS = 6;
  private static final double HOLDS = 6000;

  /** Full loads of forms that really take so much more than their estimate. */
  private static List<double[]> fullLoads(double[] really, int count, Random random) {
    List<double[]> loads = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] shares = random.doubles(FORMS).map(share -> share * share).toArray();
      double room = 0;
      for (int form = 0; form < FORMS; form++) {
        room += shares[form] * really[form];
      }
      double scale = HOLDS / room;
      loads.add(Arrays.stream(shares).map(share -> share * scale).toArray());
    }
    return loads;
  }

  private static double spread(List<double[]> loads, RoomFactors factors) {
    DescriptiveStatistics sums = new DescriptiveStatistics();
    for (double[] load : loads) {
      double sum = 0;
      for (int form = 0; form < FORMS; form++) {
        sum += factors.of(form) * load[form];
      }
      sums.addValue(sum);
    }
    return sums.getStandardDeviation() / sums.getMean();
  }

  @Test
  void beforeAnyLoadEverythingTakesItsEstimate() {
    RoomFactors factors = new RoomFactors(FORMS, HOLDS);
    assertThat(factors.of(3)).isEqualTo(1);
    assertThat(factors.goesIn()).isEqualTo(HOLDS);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void formsThatTakeMoreThanTheirEstimateAreFoundOut(long seed) {
    Random random = new Random(seed);
    double[] really = {0.7, 0.8, 1, 1, 1.6, 2.2};
    RoomFactors factors = new RoomFactors(FORMS, HOLDS);
    List<double[]> later = fullLoads(really, 40, random);
    double before = spread(later, factors);

    fullLoads(really, 40, random).forEach(factors::learn);

    assertThat(spread(later, factors)).isLessThan(before / 3);
    assertThat(factors.of(5)).isGreaterThan(factors.of(4));
    assertThat(factors.of(4)).isGreaterThan(factors.of(2));
    assertThat(factors.of(2)).isGreaterThan(factors.of(0));
  }

  /** Ridge regression is least squares with a row more for each factor (Hoerl and Kennard 1970). */
  @Test
  void theFactorsAreThoseOfLeastSquaresWithARowMoreForEach() {
    List<double[]> loads = fullLoads(new double[] {0.9, 1.1, 1.2, 0.8, 1, 1.3}, 12, new Random(7));
    RoomFactors factors = new RoomFactors(FORMS, HOLDS);
    loads.forEach(factors::learn);

    double holds = factors.goesIn();
    double[][] rows = new double[loads.size() + FORMS][FORMS];
    double[] wanted = new double[rows.length];
    for (int i = 0; i < loads.size(); i++) {
      rows[i] = loads.get(i);
      wanted[i] = holds;
    }
    for (int form = 0; form < FORMS; form++) {
      rows[loads.size() + form][form] = 0.1 * holds;
      wanted[loads.size() + form] = 0.1 * holds;
    }
    OLSMultipleLinearRegression squares = new OLSMultipleLinearRegression();
    squares.setNoIntercept(true);
    squares.newSampleData(wanted, rows);
    double[] expected = squares.estimateRegressionParameters();
    for (int form = 0; form < FORMS; form++) {
      assertThat(factors.of(form)).isCloseTo(expected[form], within(1e-9));
    }
  }

  @Test
  void whatGoesInIsTheMeanOfTheLoadsWithTheGuessCountingForThree() {
    RoomFactors factors = new RoomFactors(2, 6000);
    factors.learn(new double[] {2000, 3000});
    factors.learn(new double[] {5000, 2000});
    assertThat(factors.goesIn()).isCloseTo((3 * 6000 + 5000 + 7000) / 5.0, within(1e-9));
  }
}
