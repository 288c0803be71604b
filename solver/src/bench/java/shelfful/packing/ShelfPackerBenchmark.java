package shelfful.packing;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;

/**
 * Typical shelf questions of a load plan: one that fits easily, one that just fits, one refused.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ShelfPackerBenchmark {
  private static final double GAP = 6.4;

  private final ShelfSpace shelf = ShelfSpace.of(new Room(Region.disc(533 / 2.0), 5, Applies.BODY));
  private final BodyKind tumbler = BodyKind.round("tumbler", 38, 95);
  private final BodyKind plate = BodyKind.round("plate", 70, 30);
  private final BodyKind dish = BodyKind.upright("dish", Oval.of(90, 55), 40);
  private final BodyKind cup =
      new BodyKind(
          "cup",
          List.of(
              new Part(Disc.of(42.5), 0, 95), new Part(new Capsule(42.5, 0, 68.5, 0, 9), 20, 80)),
          Disc.of(42.5),
          true,
          1);

  private final ShelfQuestion easy = ask(List.of(tumbler, plate), 10, 3);
  private final ShelfQuestion tight = ask(List.of(tumbler, cup, dish), 4, 9, 3);
  private final ShelfQuestion hopeless = ask(List.of(tumbler, plate), 30, 6);
  private final ShelfPacker packer = new ShelfPacker();

  private ShelfQuestion ask(List<BodyKind> kinds, int... counts) {
    return ShelfQuestion.of(shelf, kinds, counts, GAP);
  }

  /** Round pieces that fit easily. */
  @Benchmark
  public ShelfAnswer easyRounds() {
    return packer.pack(easy, Effort.QUICK, 1);
  }

  /** Rounds, ovals and cups with handles, near the limit. */
  @Benchmark
  public ShelfAnswer tightMixture() {
    return packer.pack(tight, Effort.QUICK, 1);
  }

  /** More area than there is. */
  @Benchmark
  public ShelfAnswer refusedAtOnce() {
    return packer.pack(hopeless, Effort.QUICK, 1);
  }
}
