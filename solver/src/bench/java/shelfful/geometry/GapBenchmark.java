package shelfful.geometry;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The signed gap of two bodies nearly touching, as a search asks for it: no allocation. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class GapBenchmark {
  private final Contact contact = new Contact();
  private final Contour disc = Contour.of(Disc.of(42), Pose.HERE);
  private final Contour otherDisc = Contour.of(Disc.of(38), Pose.at(70, 45));
  private final Contour handle = Contour.of(new Capsule(0, 0, 64, 0, 8), new Pose(70, 45, 2));
  private final Contour otherHandle = Contour.of(new Capsule(0, 0, 64, 0, 8), new Pose(0, 0, 1));
  private final Contour oval = Contour.of(Oval.of(95, 63), new Pose(110, 80, 0.7));
  private final Contour otherOval = Contour.of(Oval.of(95, 63), new Pose(-10, -5, 2.1));

  /** Two discs: a square root. */
  @Benchmark
  public double discs() {
    return PairGap.underLimit(disc, otherDisc, 20, contact);
  }

  /** Two handles. */
  @Benchmark
  public double bars() {
    return PairGap.underLimit(handle, otherHandle, 20, contact);
  }

  /** A disc and an oval. */
  @Benchmark
  public double discAndOval() {
    return PairGap.underLimit(disc, oval, 20, contact);
  }

  /** Two ovals: a climb in the direction. */
  @Benchmark
  public double ovals() {
    return PairGap.underLimit(otherOval, oval, 20, contact);
  }
}
