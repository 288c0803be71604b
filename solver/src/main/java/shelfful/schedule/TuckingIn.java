package shelfful.schedule;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shelfful.inspect.InspectedLoad;
import shelfful.load.Load;
import shelfful.load.LoadRequest;
import shelfful.schedule.Exchange.Loaded;
import shelfful.ware.Batch;
import shelfful.ware.FiringKind;
import shelfful.week.WareLine;

/**
 * What is left of a week tucked into the glaze firings there are, all of them at once: they keep
 * their levels, but pieces make way for others and find room elsewhere. Nothing is later than it
 * was.
 */
final class TuckingIn {
  private final Ground ground;
  private final RoomBook room;
  private final LoadBook loads;
  private final Admission admission;

  TuckingIn(Ground ground, RoomBook room, LoadBook loads) {
    this.ground = ground;
    this.room = room;
    this.loads = loads;
    this.admission = new Admission(ground, room);
  }

  /** The firings with other ware in them, in their order, and what is left of the week then. */
  record Tucked(List<Loaded> loaded, List<Chunk> open) {
    Tucked {
      loaded = List.copyOf(loaded);
      open = List.copyOf(open);
    }
  }

  /**
   * Tucks in; empty when nothing better was found.
   *
   * @param firings that share what they may take
   * @param open what is left of the week
   * @param effort how much is tried: 10,000 is about a second
   */
  Optional<Tucked> tuck(List<Loaded> firings, List<Chunk> open, int effort, long seed) {
    SharedUnits units = new SharedUnits();
    List<Map<String, String>> names = new ArrayList<>();
    for (int i = 0; i < firings.size(); i++) {
      names.add(names(firings, i, units));
    }
    List<Chunk> aside = new ArrayList<>();
    for (Chunk chunk : open) {
      BitSet may = mayGoInto(chunk, firings);
      if (may.isEmpty()) {
        aside.add(chunk);
      } else {
        units.add(chunk, may, false);
      }
    }
    List<List<Batch>> batches = units.batches(firings.size(), room);
    List<Load> now = new ArrayList<>();
    for (int i = 0; i < firings.size(); i++) {
      Load load = firings.get(i).firing().load().orElseThrow();
      now.add(
          new Load(
              request(firings.get(i).firing(), load, batches.get(i), seed),
              load.columnPlanId(),
              Renaming.layers(load, names.get(i)::get),
              load.posts(),
              List.of()));
    }
    return loads.together(now, effort, seed).map(found -> tucked(firings, found, units, aside));
  }

  /** Adds what is in a firing to the shared ware; by name in its load the name there. */
  private Map<String, String> names(List<Loaded> firings, int number, SharedUnits units) {
    RealFiring firing = firings.get(number).firing();
    LoadNaming naming = new LoadNaming(ground.request(), firing.program(), firing.going());
    Map<String, String> names = new HashMap<>();
    for (Chunk chunk : firings.get(number).ware()) {
      boolean stays = admission.goesTogether(chunk);
      BitSet may = stays ? new BitSet() : mayGoInto(chunk, firings);
      may.set(number);
      List<List<String>> shared = units.add(chunk, may, stays);
      List<WareLine> members = chunk.lot().going(FiringKind.GLAZE);
      for (int unit = 0; unit < shared.size(); unit++) {
        for (int part = 0; part < members.size(); part++) {
          String batchId = members.get(part).batch().id();
          names.put(naming.pieceId(batchId, chunk.numbers().get(unit)), shared.get(unit).get(part));
        }
      }
    }
    return names;
  }

  private BitSet mayGoInto(Chunk chunk, List<Loaded> firings) {
    BitSet may = new BitSet();
    for (int i = 0; i < firings.size(); i++) {
      may.set(i, admission.mayGoIn(chunk, firings.get(i).firing()));
    }
    return may;
  }

  private LoadRequest request(RealFiring firing, Load load, List<Batch> batches, long seed) {
    KilnProgram program = firing.program();
    return new LoadRequest(
        ground.request().studio(),
        batches,
        program.program().in(program.kilnId()),
        Optional.of(load.columnPlanId()),
        Optional.empty(),
        seed,
        1);
  }

  private Tucked tucked(
      List<Loaded> firings, List<InspectedLoad> found, SharedUnits units, List<Chunk> aside) {
    List<Loaded> tucked = new ArrayList<>();
    for (int i = 0; i < firings.size(); i++) {
      Load load = found.get(i).load();
      SharedUnits.Taken taken = units.take(load.standing());
      UnitsByLot byLot = new UnitsByLot();
      List<Chunk> ware = new ArrayList<>();
      taken
          .chunks()
          .forEach(
              (chunk, numbers) -> {
                byLot.add(chunk.lot(), numbers);
                ware.add(chunk.of(numbers));
              });
      LoadAnswer answer = new LoadAnswer(load, taken.placed(), Set.of(), true);
      RealFiring again = firings.get(i).firing().again(ground.request(), answer, byLot.going());
      tucked.add(new Loaded(again, ware));
    }
    List<Chunk> open = new ArrayList<>(aside);
    open.addAll(units.left());
    return new Tucked(tucked, open);
  }
}
