package shelfful.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shelfful.schedule.Share.DuePieces;
import shelfful.studio.Studio;
import shelfful.ware.FiringKind;
import shelfful.ware.KeptApart;
import shelfful.week.Span;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/** Lays out the ware that is still to be fired for one search. */
final class BoardMaker {
  private static final int PERCENT = 100;
  private static final int MOST_TURNS = 60;
  private static final int MOST_RULES = 62;

  private final Ground ground;
  private final RoomBook room;
  private final int stretch;
  private final List<KeptApart> apart;
  private final List<String> orders;

  /**
   * A maker.
   *
   * @param stretch percent of what has gone in so far that the search is told goes in
   */
  BoardMaker(Ground ground, RoomBook room, int stretch) {
    this.ground = ground;
    this.room = room;
    this.stretch = stretch;
    this.apart =
        ground.request().studio().rules().keptApart().stream()
            .filter(rule -> rule.apartness() == KeptApart.Apartness.NOT_IN_ONE_FIRING)
            .limit(MOST_RULES)
            .toList();
    this.orders = List.copyOf(ground.request().together());
  }

  /**
   * Lays out.
   *
   * @param busy spans of each kiln that are taken
   * @param held firings whose time is held and that are still to be filled
   */
  Board board(List<Chunk> open, List<List<Span>> busy, List<HeldTurn> held) {
    WeekRequest request = ground.request();
    List<Timetable> tables =
        IntStream.range(0, request.kilns().size())
            .mapToObj(kiln -> new Timetable(request, request.kilns().get(kiln), busy.get(kiln)))
            .toList();
    List<Share> shares = new ArrayList<>();
    for (Chunk chunk : open) {
      int before = -1;
      if (chunk.bisque()) {
        before = shares.size();
        shares.add(share(before, chunk, FiringKind.BISQUE, -1));
      }
      if (chunk.glaze()) {
        shares.add(share(shares.size(), chunk, FiringKind.GLAZE, before));
      }
    }
    List<Integer> goesIn =
        ground.programs().stream()
            .map(p -> room.goesIn(p.kiln(), p.program().kind()) * stretch / PERCENT)
            .toList();
    return new Board(
        ground.clock(),
        shares,
        turns(tables, held),
        ground.programs(),
        tables,
        held,
        goesIn,
        ground.glazing(),
        orders.size(),
        shares.stream().sorted(Share.BY_WANTED).toList(),
        new ShareTable(shares, ground.programs().size(), tables.size()));
  }

  private List<Turn> turns(List<Timetable> tables, List<HeldTurn> held) {
    List<Turn> turns = new ArrayList<>();
    for (int kiln = 0; kiln < tables.size(); kiln++) {
      int most = most(kiln, tables.get(kiln));
      for (int order = 0; order < most; order++) {
        turns.add(new Turn(turns.size(), kiln, order, kiln));
      }
    }
    for (int i = 0; i < held.size(); i++) {
      turns.add(new Turn(turns.size(), tables.size() + i, 0, held.get(i).program().kiln()));
    }
    return turns;
  }

  /** As many as its quickest program could be fired. */
  private int most(int kiln, Timetable table) {
    int most = 0;
    for (KilnProgram program : ground.programs()) {
      int count = 0;
      Optional<Turnaround> next =
          program.kiln() == kiln ? table.next(program, 0) : Optional.empty();
      while (next.isPresent() && count < MOST_TURNS) {
        count++;
        next = table.next(program, next.get().unpacked());
      }
      most = Math.max(most, count);
    }
    return most;
  }

  private Share share(int index, Chunk chunk, FiringKind kind, int before) {
    Lot lot = chunk.lot();
    UnitKind unit = lot.kind(kind).orElseThrow();
    List<WareLine> going = lot.going(kind);
    int units = chunk.numbers().size();
    return new Share(
        index,
        chunk,
        kind,
        before,
        units * going.size(),
        due(going, kind, units),
        kind == FiringKind.GLAZE ? bits(going, true) : 0,
        kind == FiringKind.GLAZE ? bits(going, false) : 0,
        order(going),
        ground.earlier(lot, chunk.numbers().get(0), kind),
        ground.programs().stream()
            .map(p -> ground.suits(p, lot, kind) && !room.refuses(p, unit))
            .toList(),
        IntStream.range(0, ground.request().kilns().size())
            .map(kiln -> units * room.usage(unit, kiln))
            .boxed()
            .toList(),
        ground.wanted(lot));
  }

  private List<DuePieces> due(List<WareLine> going, FiringKind kind, int units) {
    return going.stream()
        .filter(line -> line.isFinishedBy(kind))
        .filter(line -> line.batch().due().isPresent())
        .collect(
            Collectors.groupingBy(
                line -> ground.clock().day(line.batch().due().get()),
                TreeMap::new,
                Collectors.counting()))
        .entrySet()
        .stream()
        .map(entry -> new DuePieces(entry.getKey(), (int) (entry.getValue() * units)))
        .toList();
  }

  private long bits(List<WareLine> going, boolean first) {
    Studio studio = ground.request().studio();
    long bits = 0;
    for (int i = 0; i < apart.size(); i++) {
      KeptApart rule = apart.get(i);
      String glaze = first ? rule.glazeId() : rule.otherGlazeId();
      boolean has =
          going.stream().anyMatch(line -> line.batch().glazeId().equals(Optional.of(glaze)));
      bits |= has && studio.glaze(glaze).isPresent() ? 1L << i : 0;
    }
    return bits;
  }

  private int order(List<WareLine> going) {
    return going.stream()
        .flatMap(line -> line.batch().order().stream())
        .mapToInt(orders::indexOf)
        .filter(index -> index >= 0)
        .findFirst()
        .orElse(-1);
  }
}
