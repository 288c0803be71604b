package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import shelfful.schedule.SketchMove.ShareChange;
import shelfful.schedule.SketchMove.TurnChange;

/** Draws changes of a sketch at random. */
final class SketchProposals {
  private static final int TRIES = 12;
  private static final List<Integer> WEIGHTS = List.of(24, 14, 4, 6, 4, 4, 8, 20, 16, 400);

  private final WeekSketch sketch;
  private final Board board;
  private final Random random;
  private final List<TurnChoice> free;

  SketchProposals(WeekSketch sketch, Random random) {
    this.sketch = sketch;
    this.board = sketch.board();
    this.random = random;
    this.free = sketch.turns().stream().filter(turn -> !board.isHeld(turn.turn())).toList();
  }

  SketchMove next() {
    int thrown = random.nextInt(WEIGHTS.stream().mapToInt(Integer::intValue).sum());
    int kind = 0;
    while (thrown >= WEIGHTS.get(kind)) {
      thrown -= WEIGHTS.get(kind);
      kind++;
    }
    return switch (kind) {
      case 0 -> shareElsewhere();
      case 1 -> swapShares();
      case 2 -> otherProgram();
      case 3 -> emptyTurn();
      case 4 -> swapTurns();
      case 5 -> squeezeIn();
      case 6 -> gather();
      case 7 -> hurried();
      case 8 -> givenOutAnew();
      default -> regrouped();
    };
  }

  private SketchMove shareElsewhere() {
    ShareChoice share = anyShare();
    List<TurnChoice> fitting = fitting(share);
    return fitting.isEmpty()
        ? move(share, null)
        : move(share, fitting.get(random.nextInt(fitting.size())).turn());
  }

  private SketchMove swapShares() {
    ShareChoice one = anyShare();
    ShareChoice other = anyShare();
    for (int i = 0; i < TRIES && !mayTakePlaces(one, other); i++) {
      other = anyShare();
    }
    if (!mayTakePlaces(one, other)) {
      return shareElsewhere();
    }
    return new SketchMove(
        List.of(new ShareChange(one, other.turn()), new ShareChange(other, one.turn())), List.of());
  }

  private static boolean mayTakePlaces(ShareChoice one, ShareChoice other) {
    return one.turn() != other.turn() && one.share().kind() == other.share().kind();
  }

  private SketchMove otherProgram() {
    if (free.isEmpty()) {
      return shareElsewhere();
    }
    TurnChoice turn = free.get(random.nextInt(free.size()));
    List<KilnProgram> programs = board.programsOf(turn.turn().kiln());
    KilnProgram program = programs.get(random.nextInt(programs.size()));
    return new SketchMove(List.of(), List.of(new TurnChange(turn, program)));
  }

  /** Everything of one turn goes elsewhere, so that it need not be fired. */
  private SketchMove emptyTurn() {
    Turn turn = anyShare().turn();
    List<ShareChange> changes = new ArrayList<>();
    for (ShareChoice share : sketch.shares()) {
      if (share.turn() == turn) {
        List<TurnChoice> others =
            fitting(share).stream().filter(other -> other.turn() != turn).toList();
        if (!others.isEmpty()) {
          changes.add(new ShareChange(share, others.get(random.nextInt(others.size())).turn()));
        }
      }
    }
    return new SketchMove(changes, List.of());
  }

  private SketchMove swapTurns() {
    if (free.size() < 2) {
      return shareElsewhere();
    }
    TurnChoice one = free.get(random.nextInt(free.size()));
    List<TurnChoice> others =
        free.stream().filter(t -> t != one && t.turn().kiln() == one.turn().kiln()).toList();
    if (others.isEmpty()) {
      return otherProgram();
    }
    TurnChoice other = others.get(random.nextInt(others.size()));
    List<ShareChange> changes = new ArrayList<>();
    for (ShareChoice share : sketch.shares()) {
      if (share.turn() == one.turn()) {
        changes.add(new ShareChange(share, other.turn()));
      } else if (share.turn() == other.turn()) {
        changes.add(new ShareChange(share, one.turn()));
      }
    }
    return new SketchMove(
        changes,
        List.of(new TurnChange(one, other.program()), new TurnChange(other, one.program())));
  }

  /** A new firing between two: all later ones of the kiln move on by one turn. */
  private SketchMove squeezeIn() {
    if (free.isEmpty()) {
      return shareElsewhere();
    }
    TurnChoice at = free.get(random.nextInt(free.size()));
    List<TurnChoice> later =
        free.stream()
            .filter(t -> t.turn().track() == at.turn().track())
            .filter(t -> t.turn().order() >= at.turn().order())
            .toList();
    List<KilnProgram> programs = board.programsOf(at.turn().kiln());
    List<TurnChange> turns = new ArrayList<>();
    List<ShareChange> shares = new ArrayList<>();
    turns.add(new TurnChange(at, programs.get(random.nextInt(programs.size()))));
    for (int i = 1; i < later.size(); i++) {
      turns.add(new TurnChange(later.get(i), later.get(i - 1).program()));
    }
    for (ShareChoice share : sketch.shares()) {
      for (int i = 0; i < later.size(); i++) {
        if (share.turn() == later.get(i).turn()) {
          Turn to = i + 1 < later.size() ? later.get(i + 1).turn() : null;
          shares.add(new ShareChange(share, to));
        }
      }
    }
    return new SketchMove(shares, turns);
  }

  /** A few shares at once into one turn. */
  private SketchMove gather() {
    ShareChoice share = anyShare();
    List<TurnChoice> fitting = fitting(share);
    if (fitting.isEmpty()) {
      return shareElsewhere();
    }
    TurnChoice to = fitting.get(random.nextInt(fitting.size()));
    List<ShareChange> changes = new ArrayList<>();
    int most = 2 + random.nextInt(3);
    int from = random.nextInt(sketch.shares().size());
    for (int i = 0; i < sketch.shares().size() && changes.size() < most; i++) {
      ShareChoice one = sketch.shares().get((from + i) % sketch.shares().size());
      if (one.turn() == share.turn() && one.share().fits(to.program())) {
        changes.add(new ShareChange(one, to.turn()));
      }
    }
    return new SketchMove(changes, List.of());
  }

  /** Something late or waiting takes the place of what is wanted later. */
  private SketchMove hurried() {
    return new Hurry(sketch, random).move().orElseGet(this::shareElsewhere);
  }

  private SketchMove regrouped() {
    return new Regrouping(sketch, random).move().orElseGet(this::shareElsewhere);
  }

  /** Other programs, and everything given out anew to them. */
  private SketchMove givenOutAnew() {
    int kind = random.nextInt(4);
    SketchMove change =
        switch (kind) {
          case 0 -> otherProgram();
          case 1 -> swapTurns();
          case 2 -> squeezeIn();
          default -> skipTurn();
        };
    Lineup lineup = new Lineup(sketch);
    change.turns().forEach(lineup::fire);
    lineup.giveOutAnew();
    return lineup.change();
  }

  /** A turn less: all later ones of the kiln move up. */
  private SketchMove skipTurn() {
    if (free.isEmpty()) {
      return shareElsewhere();
    }
    TurnChoice at = free.get(random.nextInt(free.size()));
    List<TurnChange> turns = new ArrayList<>();
    TurnChoice before = null;
    for (TurnChoice turn : free) {
      boolean later =
          turn.turn().track() == at.turn().track() && turn.turn().order() >= at.turn().order();
      if (later && before != null) {
        turns.add(new TurnChange(before, turn.program()));
      }
      before = later ? turn : before;
    }
    turns.add(new TurnChange(before, null));
    return new SketchMove(List.of(), turns);
  }

  private List<TurnChoice> fitting(ShareChoice share) {
    List<TurnChoice> fitting = new ArrayList<>();
    for (TurnChoice turn : sketch.turns()) {
      if (turn.program() != null && share.share().fits(turn.program())) {
        fitting.add(turn);
      }
    }
    return fitting;
  }

  private SketchMove move(ShareChoice share, Turn to) {
    return new SketchMove(List.of(new ShareChange(share, to)), List.of());
  }

  private ShareChoice anyShare() {
    return sketch.shares().get(random.nextInt(sketch.shares().size()));
  }
}
