package shelfful.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shelfful.choice.ChoiceProblem;
import shelfful.choice.FewLayersAnew;
import shelfful.choice.KnownLayer;
import shelfful.choice.OpenLevel;

/**
 * Gives two or three shelves of a load other contents of those met so far, the rest staying: the
 * best there is, even if it is a little less than now.
 */
final class Rechooser {
  private final SketchJudge judge;
  private final ChoiceProblem problem;
  private final ChosenWare ware;
  private final List<List<Integer>> waysUp = new ArrayList<>();

  Rechooser(SketchJudge judge, ChoiceProblem problem, ChosenWare ware) {
    this.judge = judge;
    this.problem = problem;
    this.ware = ware;
    for (int c = 0; c < problem.columns().size(); c++) {
      if (judge.stand().above(c).isEmpty()) {
        List<Integer> way = new ArrayList<>();
        for (int at = c; at >= 0; at = problem.columns().get(at).below()) {
          way.add(at);
        }
        waysUp.add(way);
      }
    }
  }

  /** A shelf of the sketch. */
  private record At(int column, int level, int place) {}

  /** Changes the sketch; false when there was nothing else to choose. */
  boolean rechoose(Sketch sketch, int shelves, double loss, Random random) {
    List<At> open = open(sketch, shelves, random);
    if (open.isEmpty()) {
      return false;
    }
    int[] used = judge.byKind(sketch.placed());
    List<int[]> had = new ArrayList<>();
    List<OpenLevel> levels = new ArrayList<>();
    for (At at : open) {
      int[] kinds = judge.byKind(sketch.counts(at.column(), at.level(), at.place()));
      had.add(kinds);
      for (int kind = 0; kind < used.length; kind++) {
        used[kind] -= kinds[kind];
      }
      levels.add(level(sketch, at));
    }
    FewLayersAnew choice =
        new FewLayersAnew(
            problem.worth(), judge.met().pool(), levels, used, roomLeft(sketch, open));
    double now = problem.worthOf(judge.byKind(sketch.placed()));
    StackNeeds needs = StackNeeds.of(sketch, judge.ware().lots());
    List<KnownLayer> chosen =
        choice.better(now - loss, had, contents -> canStand(needs, open, levels, contents));
    return chosen != null && put(sketch, open, chosen);
  }

  /** Whether posts and shelves can carry a load when some shelves hold something else. */
  private boolean canStand(
      StackNeeds needs, List<At> open, List<OpenLevel> levels, List<KnownLayer> contents) {
    StackNeeds changed = needs;
    for (int i = 0; i < contents.size(); i++) {
      At at = open.get(i);
      long[] grams = needs.level(at.column(), at.level()).grams().clone();
      grams[at.place()] = ware.grams(contents.get(i));
      int highest = Math.max(levels.get(i).lowestClass(), contents.get(i).heightClass());
      StackNeeds.Level level = new StackNeeds.Level(judge.classes().height(highest), grams);
      changed = changed.instead(at.column(), at.level(), level);
    }
    return judge.stack(changed).isPresent();
  }

  private List<At> open(Sketch sketch, int shelves, Random random) {
    List<At> open = new ArrayList<>();
    for (int tries = 0; tries < 10 && open.size() < shelves; tries++) {
      int column = random.nextInt(sketch.columns());
      if (sketch.levels(column) > 0) {
        int level = random.nextInt(sketch.levels(column));
        int place = random.nextInt(sketch.places(column, level));
        if (open.stream().noneMatch(at -> at.column() == column && at.level() == level)) {
          open.add(new At(column, level, place));
        }
      }
    }
    return open;
  }

  private long[] heights(Sketch sketch, int column, int level) {
    return problem.columns().get(column).takes(judge.isOnTop(sketch, column, level));
  }

  private OpenLevel level(Sketch sketch, At at) {
    int lowest = 0;
    for (int place = 0; place < sketch.places(at.column(), at.level()); place++) {
      if (place != at.place()) {
        int[] counts = sketch.counts(at.column(), at.level(), place);
        lowest = Math.max(lowest, judge.classes().of(judge.byKind(counts)));
      }
    }
    int spot = judge.stand().spotsOf(at.column()).get(at.place()).index();
    int[] paths = new int[waysUp.size()];
    int count = 0;
    for (int way = 0; way < waysUp.size(); way++) {
      if (waysUp.get(way).contains(at.column())) {
        paths[count++] = way;
      }
    }
    return new OpenLevel(
        spot,
        judge.isOnTop(sketch, at.column(), at.level()),
        heights(sketch, at.column(), at.level()),
        lowest,
        Arrays.copyOf(paths, count));
  }

  private long[] roomLeft(Sketch sketch, List<At> open) {
    long[] left = new long[waysUp.size()];
    for (int way = 0; way < left.length; way++) {
      List<Integer> columns = waysUp.get(way);
      left[way] = problem.columns().get(columns.get(columns.size() - 1)).capacity();
      for (int c : columns) {
        for (int l = 0; l < sketch.levels(c); l++) {
          int column = c;
          int level = l;
          if (open.stream().noneMatch(at -> at.column() == column && at.level() == level)) {
            left[way] -= heights(sketch, c, l)[classOf(sketch, c, l)];
          }
        }
      }
    }
    return left;
  }

  private int classOf(Sketch sketch, int column, int level) {
    int highest = 0;
    for (int place = 0; place < sketch.places(column, level); place++) {
      int[] kinds = judge.byKind(sketch.counts(column, level, place));
      highest = Math.max(highest, judge.classes().of(kinds));
    }
    return highest;
  }

  private boolean put(Sketch sketch, List<At> open, List<KnownLayer> chosen) {
    Optional<Stacking> stacking = judge.stack(StackNeeds.of(sketch, judge.ware().lots()));
    if (stacking.isEmpty()) {
      return false;
    }
    for (At at : open) {
      Arrays.fill(sketch.counts(at.column(), at.level(), at.place()), 0);
    }
    int[] placed = sketch.placed();
    int[] left = judge.ware().lots().stream().mapToInt(Lot::size).toArray();
    for (int lot = 0; lot < left.length; lot++) {
      left[lot] -= placed[lot];
    }
    for (int i = 0; i < open.size(); i++) {
      At at = open.get(i);
      ware.give(
          chosen.get(i).counts(),
          sketch.counts(at.column(), at.level(), at.place()),
          left,
          placed,
          judge.zone(stacking.get().level(at.column(), at.level())));
    }
    return true;
  }
}
