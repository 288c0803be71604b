package shelfful.schedule;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.schedule.RealFiring.Going;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.week.WareLine;
import shelfful.week.WeekRequest;

/**
 * Names the pieces of a planned load after the batches they really are of. The load then holds just
 * these pieces and leaves none out; within it the pieces of a batch are counted from 1.
 */
final class LoadNaming {
  private final WeekRequest request;
  private final KilnProgram program;
  private final List<Going> going;
  private final FiringKind kind;
  private final Map<String, TreeMap<Integer, Integer>> local = new HashMap<>();

  LoadNaming(WeekRequest request, KilnProgram program, List<Going> going) {
    this.request = request;
    this.program = program;
    this.going = List.copyOf(going);
    this.kind = program.program().kind();
    for (Going one : going) {
      for (WareLine line : one.lot().going(kind)) {
        TreeMap<Integer, Integer> numbers =
            local.computeIfAbsent(line.batch().id(), any -> new TreeMap<>());
        one.numbers().forEach(number -> numbers.put(number, 0));
      }
    }
    for (TreeMap<Integer, Integer> numbers : local.values()) {
      int next = 1;
      for (int number : List.copyOf(numbers.keySet())) {
        numbers.put(number, next++);
      }
    }
  }

  /**
   * The load under its real names.
   *
   * @param answer a load in which as many units of each kind stand as go
   * @param times when it is fired
   */
  Load named(LoadAnswer answer, Turnaround times) {
    Map<String, String> names = names(answer);
    List<Layer> layers = Renaming.layers(answer.load(), names::get);
    LoadRequest asked =
        new LoadRequest(
            request.studio(),
            batches(),
            program.program().in(program.kilnId()),
            Optional.empty(),
            Optional.of(new MinuteClock(request).time(times.loads()).toLocalDate()),
            request.effort().seed(),
            answer.load().request().steps());
    return new Load(asked, answer.load().columnPlanId(), layers, answer.load().posts(), List.of());
  }

  /** The name that a piece of a batch has in the load; of a pot with its lid beside it the pot. */
  String pieceId(String batchId, int number) {
    return String.format(Locale.ROOT, "%s-%03d", batchId, local.get(batchId).get(number));
  }

  private List<Batch> batches() {
    return request.lines().stream()
        .filter(line -> local.containsKey(line.batch().id()))
        .map(line -> line.going(kind, local.get(line.batch().id()).size()))
        .toList();
  }

  private Map<String, String> names(LoadAnswer answer) {
    Map<String, String> names = new HashMap<>();
    Map<UnitKind, Integer> used = new HashMap<>();
    List<Going> ordered =
        going.stream().sorted(Comparator.comparingInt((Going g) -> g.lot().index())).toList();
    for (Going one : ordered) {
      UnitKind unit = one.lot().kind(kind).orElseThrow();
      List<WareLine> members = one.lot().going(kind);
      for (int number : one.numbers()) {
        int at = used.merge(unit, 1, Integer::sum) - 1;
        List<String> pieces = answer.placed().get(unit).get(at).pieceIds();
        for (int part = 0; part < members.size(); part++) {
          String batch = members.get(part).batch().id();
          names.put(pieces.get(part), pieceId(batch, number));
        }
      }
    }
    return names;
  }
}
