package shelfful.packing;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/** One minimisation from one and the same scattered start: 22 bodies that nearly fill a shelf. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class MinimiserBenchmark {
  private static final double RADIUS = 266;

  private final LayoutEnergy energy = new LayoutEnergy(new ShelfModel(question()));
  private final Minimiser minimiser = new Minimiser(energy);
  private final double[] start = scattered();

  private static ShelfQuestion question() {
    ShelfSpace shelf = ShelfSpace.of(new Room(Region.disc(RADIUS), 5, Applies.BODY));
    BodyKind tumbler = BodyKind.upright("tumbler", Disc.of(40), 112);
    BodyKind dish = BodyKind.upright("dish", Oval.of(98, 64), 46);
    return ShelfQuestion.of(shelf, List.of(tumbler, dish), new int[] {18, 4}, 6.4);
  }

  private double[] scattered() {
    SplittableRandom random = new SplittableRandom(1);
    double[] at = new double[energy.unknowns()];
    for (int i = 0; i < at.length; i++) {
      at[i] = random.nextDouble(-RADIUS / 2, RADIUS / 2);
    }
    return at;
  }

  /** To the end. */
  @Benchmark
  public double fromAScatteredStart() {
    return minimiser.minimise(start.clone());
  }
}
