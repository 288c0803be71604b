package shelfful.packing;

/**
 * The layout energy: the sum of squared violations of every clearance, in mm², over pairs of
 * bodies, rooms and obstacles. Zero exactly when the setting is valid. Continuously differentiable
 * wherever no two outlines overlap deeply; by the envelope theorem each gap's gradient is that of
 * its supporting direction held fixed.
 */
final class LayoutEnergy {
  final ShelfModel model;
  final Setting setting;
  private final Neighbours neighbours;
  private final PairTerms pairs;
  private final RoomTerms rooms;
  private final ObstacleTerms obstacles;

  /** Added to every required gap, mm: a little for safety, more to spread bodies evenly. */
  private double extra;

  LayoutEnergy(ShelfModel model) {
    this.model = model;
    this.setting = new Setting(model);
    this.neighbours = new Neighbours(setting);
    this.pairs = new PairTerms(setting);
    this.rooms = new RoomTerms(setting);
    this.obstacles = new ObstacleTerms(setting);
    this.extra = model.aim;
  }

  /** Asks for so much more than every required gap. */
  void widen(double spare) {
    extra = spare + model.aim;
  }

  int unknowns() {
    return setting.unknowns;
  }

  /** The energy at a vector of unknowns; its gradient goes into the second argument. */
  double at(double[] unknowns, double[] gradient) {
    setting.begin(unknowns, gradient);
    if (neighbours.follow(unknowns, extra)) {
      rooms.follow(extra, neighbours.leeway());
      obstacles.follow(extra, neighbours.leeway());
    }
    pairs.add(neighbours, extra);
    rooms.add(extra);
    obstacles.add(extra);
    return setting.energy;
  }

  /** Whether every violation of the last evaluation is within what it aims beyond. */
  boolean fits() {
    return setting.worst <= model.aim / 2;
  }

  /** The energy of one more body's contours against room, obstacles and the bodies present. */
  double intrusion(Ghost ghost, boolean[] present, double atMost) {
    double sum = rooms.of(ghost, extra);
    sum += sum < atMost ? obstacles.of(ghost, extra) : 0;
    for (int i = 0; i < model.bodies && sum < atMost; i++) {
      if (present[i]) {
        sum += against(ghost, i);
      }
    }
    return sum;
  }

  private double against(Ghost ghost, int body) {
    int pair = ghost.kind * model.kinds + model.kindOf[body];
    double dx = setting.at[2 * body] - ghost.x;
    double dy = setting.at[2 * body + 1] - ghost.y;
    double square = dx * dx + dy * dy;
    if (body < model.roundBodies && model.round[ghost.kind]) {
      double limit = model.axisDistance[pair] + extra;
      if (limit < 0 || square >= limit * limit) {
        return 0;
      }
      double violation = limit - Math.sqrt(square);
      return violation * violation;
    }
    double limit = ghost.reach + model.reach[model.kindOf[body]] + model.required[pair] + extra;
    return square >= limit * limit ? 0 : pairs.between(ghost.kind, ghost.parts, body, extra);
  }
}
