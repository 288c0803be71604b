package shelfful.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import shelfful.geometry.Capsule;
import shelfful.geometry.Disc;
import shelfful.geometry.Oval;
import shelfful.geometry.Region;
import shelfful.geometry.Shape;

/** Seeded questions of every sort: all shapes, bands, rooms, obstacles and tolerances. */
final class RandomQuestions {
  private final SplittableRandom random;

  RandomQuestions(long seed) {
    random = new SplittableRandom(seed);
  }

  ShelfQuestion next() {
    int kinds = 1 + random.nextInt(4);
    List<BodyKind> all = new ArrayList<>();
    int[] counts = new int[kinds];
    for (int i = 0; i < kinds; i++) {
      all.add(kind(i));
      counts[i] = random.nextInt(7);
    }
    double[][] clearance = new double[kinds][kinds];
    for (int i = 0; i < kinds; i++) {
      for (int j = 0; j <= i; j++) {
        clearance[i][j] = random.nextInt(3) == 0 ? 0 : between(1, 12);
        clearance[j][i] = clearance[i][j];
      }
    }
    return new ShelfQuestion(space(), all, counts, clearance);
  }

  private BodyKind kind(int index) {
    double tolerance = random.nextBoolean() ? 0 : between(0, 3);
    Shape body = shape();
    List<Part> parts = new ArrayList<>(List.of(new Part(body, 0, between(30, 120))));
    switch (random.nextInt(3)) {
      case 0 -> parts.add(new Part(new Capsule(20, 0, between(30, 70), 5, 8), 10, 50));
      case 1 -> parts.add(new Part(Disc.of(between(20, 70)), 40, 60));
      default -> {}
    }
    Shape foot = Disc.of(between(10, 25));
    return new BodyKind("kind " + index, parts, foot, random.nextInt(4) > 0, tolerance);
  }

  private Shape shape() {
    return switch (random.nextInt(3)) {
      case 0 -> Disc.of(between(20, 60));
      case 1 -> Oval.of(between(20, 70), between(20, 70));
      default -> new Capsule(-between(5, 40), 0, between(5, 40), 3, between(10, 30));
    };
  }

  private ShelfSpace space() {
    Region shelf =
        switch (random.nextInt(5)) {
          case 0 -> Region.disc(between(-50, 50), between(-50, 50), 266);
          case 1 -> Region.halfDisc(290, between(0, 6), 2);
          case 2 -> Region.rectangle(410, 560);
          case 3 -> Region.oval(320, 220);
          default -> Region.regularPolygon(8, 260, 0.2);
        };
    Room whole = new Room(shelf, between(-5, 8), Applies.BODY);
    List<Room> rooms = new ArrayList<>(List.of(whole));
    if (random.nextBoolean()) {
      rooms.add(new Room(Region.disc(240), 5, Applies.FOOT));
    }
    List<Obstacle> posts = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      Shape post = new Disc(between(-200, 200), between(-200, 200), 19);
      posts.add(new Obstacle(post, 0, between(30, 100), 10));
    }
    return new ShelfSpace(rooms, posts);
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
