package shelfful.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import shelfful.inspect.InspectedLoad;
import shelfful.kiln.ColumnPlan;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.studio.Studio;
import shelfful.ware.Batch;

/**
 * Plans loads and keeps every answer: the same ware asked of the same program with the same effort
 * is the same load, so a firing that did not change is not planned again. May be used by several
 * threads: who asks what another is planning already waits for that.
 */
final class LoadBook {
  private static final int MOST_OF_A_KIND = Batch.MOST_PIECES;

  private final Studio studio;
  private final LoadSource source;
  private final long seed;
  private final Map<Question, FutureTask<Optional<LoadAnswer>>> answers = new ConcurrentHashMap<>();
  private final Optional<FavouritePlans> favourites;
  private final Optional<LikeLoads> earlier;

  /** How much units are wanted. */
  private enum Wish {
    MUST(""),
    MEANT("="),
    MAY("+");

    private final String mark;

    Wish(String mark) {
      this.mark = mark;
    }

    int units(Asked asked) {
      return switch (this) {
        case MUST -> asked.must();
        case MEANT -> asked.meant();
        case MAY -> asked.may();
      };
    }

    int priority(Asked asked) {
      return switch (this) {
        case MUST -> 1;
        case MEANT -> 2 * asked.weight();
        case MAY -> asked.weight();
      };
    }
  }

  private record Question(int program, List<Asked> asked, int steps) {}

  /**
   * A book.
   *
   * @param favourites where loads need not be repeatable: which column plans to try
   */
  LoadBook(Studio studio, LoadSource source, long seed, Optional<FavouritePlans> favourites) {
    this.favourites = favourites;
    this.earlier = favourites.map(any -> new LikeLoads());
    this.studio = studio;
    this.source = source;
    this.seed = seed;
  }

  /**
   * The load, or empty when the judge refused it.
   *
   * @param asked in the order of the kinds
   */
  Optional<LoadAnswer> load(KilnProgram program, List<Asked> asked, int steps) {
    FutureTask<Optional<LoadAnswer>> mine = new FutureTask<>(() -> plan(program, asked, steps));
    FutureTask<Optional<LoadAnswer>> first =
        answers.putIfAbsent(new Question(program.index(), asked, steps), mine);
    if (first == null) {
      mine.run();
    }
    return answer(first == null ? mine : first);
  }

  /** The best load of every column plan, none of them begun from an earlier one. */
  Optional<LoadAnswer> anew(KilnProgram program, List<Asked> asked, int steps) {
    return trial(program, asked, steps, false, List.of()).best();
  }

  /** Several loads bettered together, by where loads come from. */
  Optional<List<InspectedLoad>> together(List<Load> loads, int effort, long chance) {
    return source.together(loads, effort, chance);
  }

  private static Optional<LoadAnswer> answer(FutureTask<Optional<LoadAnswer>> task) {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException wish) {
          interrupted = true;
        } catch (ExecutionException fault) {
          if (fault.getCause() instanceof RuntimeException own) {
            throw own;
          }
          throw new IllegalStateException("a load could not be planned", fault.getCause());
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private Optional<LoadAnswer> plan(KilnProgram program, List<Asked> asked, int steps) {
    if (steps == 0 || favourites.isEmpty()) {
      return plan(program, asked, steps, Optional.empty(), true);
    }
    Optional<String> favourite = favourites.get().plan(program);
    Optional<LoadAnswer> answer =
        favourite.flatMap(plan -> plan(program, asked, steps, Optional.of(plan), true));
    if (answer.filter(LoadBook::refusesNothing).isPresent()) {
      return answer;
    }
    // What cannot stand in one column plan may stand in another: only all of them refuse it.
    PlanTrial trial = trial(program, asked, steps, true, answer.stream().toList());
    if (trial.answers().stream().noneMatch(LoadBook::takesAll)) {
      favourites.get().tried(program, trial.shares());
    }
    return trial.best();
  }

  /**
   * Every column plan on its own, until all that is asked for goes in.
   *
   * @param known answers in some of them
   */
  private PlanTrial trial(
      KilnProgram program, List<Asked> asked, int steps, boolean fromLike, List<LoadAnswer> known) {
    List<LoadAnswer> answers = new ArrayList<>(known);
    for (ColumnPlan plan : studio.kiln(program.kilnId()).orElseThrow().columnPlans()) {
      boolean isKnown =
          known.stream().anyMatch(answer -> answer.load().columnPlanId().equals(plan.id()));
      if (!isKnown && answers.stream().noneMatch(LoadBook::takesAll)) {
        plan(program, asked, steps, Optional.of(plan.id()), fromLike).ifPresent(answers::add);
      }
    }
    return new PlanTrial(asked, answers);
  }

  private static boolean takesAll(LoadAnswer answer) {
    return !answer.leftForRoom() && refusesNothing(answer);
  }

  private static boolean refusesNothing(LoadAnswer answer) {
    return answer.refused().isEmpty()
        && answer.placed().values().stream().anyMatch(units -> !units.isEmpty());
  }

  private Optional<LoadAnswer> plan(
      KilnProgram program,
      List<Asked> asked,
      int steps,
      Optional<String> columnPlanId,
      boolean fromLike) {
    List<Batch> batches = new ArrayList<>();
    for (Asked one : asked) {
      for (Wish wish : Wish.values()) {
        batches.addAll(batches(one, wish));
      }
    }
    LoadRequest request =
        new LoadRequest(
            studio,
            batches,
            program.program().in(program.kilnId()),
            columnPlanId,
            Optional.empty(),
            seed,
            steps);
    Optional<Load> like =
        steps == 0 || !fromLike
            ? Optional.empty()
            : earlier.flatMap(known -> known.like(program, asked, request));
    Optional<LoadAnswer> answer =
        like.map(load -> source.plan(request, load))
            .orElseGet(() -> source.plan(request))
            .map(InspectedLoad::load)
            .map(load -> answer(load, asked));
    if (steps > 0) {
      answer.ifPresent(found -> earlier.ifPresent(known -> known.add(program, found)));
    }
    return answer;
  }

  private static List<Batch> batches(Asked asked, Wish wish) {
    UnitKind kind = asked.kind();
    int units = wish.units(asked);
    List<Batch> batches = new ArrayList<>();
    for (int part = 0; part < kind.parts().size() && units > 0; part++) {
      Optional<String> set =
          kind.parts().size() > 1 ? Optional.of(name(kind, 0, wish)) : Optional.empty();
      int quantity = Math.min(units, MOST_OF_A_KIND);
      batches.add(
          kind.parts()
              .get(part)
              .batch(
                  name(kind, part, wish),
                  quantity,
                  kind.kind(),
                  set,
                  wish == Wish.MUST,
                  wish.priority(asked)));
    }
    return batches;
  }

  /** By unit that is asked for, what must go in first, the names of its parts. */
  static List<List<String>> unitNames(Asked asked) {
    List<List<String>> names = new ArrayList<>();
    for (Wish wish : Wish.values()) {
      for (int number = 1; number <= Math.min(wish.units(asked), MOST_OF_A_KIND); number++) {
        names.add(pieceIds(asked.kind(), wish, number));
      }
    }
    return names;
  }

  private static List<String> pieceIds(UnitKind kind, Wish wish, int number) {
    List<String> ids = new ArrayList<>();
    for (int part = 0; part < kind.parts().size(); part++) {
      ids.add(String.format(Locale.ROOT, "%s-%03d", name(kind, part, wish), number));
    }
    return ids;
  }

  private static String name(UnitKind kind, int part, Wish wish) {
    return "K" + kind.index() + "." + part + wish.mark;
  }

  private LoadAnswer answer(Load load, List<Asked> asked) {
    Set<String> standing = load.standing();
    Map<UnitKind, List<LoadAnswer.PlacedUnit>> placed = new HashMap<>();
    Map<String, UnitKind> kinds = new HashMap<>();
    for (Asked one : asked) {
      placed.put(
          one.kind(),
          unitNames(one).stream()
              .filter(standing::containsAll)
              .map(LoadAnswer.PlacedUnit::new)
              .toList());
      kinds.put("K" + one.kind().index(), one.kind());
    }
    Set<UnitKind> refused = new HashSet<>();
    boolean room = false;
    for (LeftOut out : load.leftOut()) {
      if (isForRoom(out.reason())) {
        room = true;
      } else {
        refused.add(kinds.get(out.pieceId().substring(0, out.pieceId().indexOf('.'))));
      }
    }
    return new LoadAnswer(load, placed, refused, room);
  }

  private static boolean isForRoom(LeftOut.Reason reason) {
    return switch (reason) {
      case NO_ROOM, SET_WAITS, KEPT_APART, TAKEN_OUT -> true;
      default -> false;
    };
  }
}
