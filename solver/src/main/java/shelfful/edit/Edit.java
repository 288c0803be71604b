package shelfful.edit;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import shelfful.load.Layer;
import shelfful.load.LeftOut;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.measure.Angle;
import shelfful.measure.Point;

/**
 * One thing done to a plan, as a value: a named step of its history. What was placed by hand is
 * pinned. Edits may lead to a plan that breaks rules of a setting; they never lose a piece.
 */
public sealed interface Edit {

  /** Whether there is anything to do it to, and no lock forbids it. */
  boolean fits(WorkPlan plan);

  /**
   * The plan after it.
   *
   * @throws IllegalArgumentException when it does not fit
   */
  default WorkPlan on(WorkPlan plan) {
    if (!fits(plan)) {
      throw new IllegalArgumentException("This cannot be done to the plan: " + this);
    }
    return changed(plan);
  }

  /** The plan after it, where it fits. */
  WorkPlan changed(WorkPlan plan);

  /** A piece, with its pile, stands elsewhere on its layer, perhaps turned on the way. */
  record MovePiece(String pieceId, Point to, Angle turn) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.layerOf(pieceId).isPresent() && !plan.isHeld(pieceId);
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      return Edit.moved(plan, pieceId, to, turn);
    }
  }

  /** A piece is turned, with its pile, to a direction where it stands. */
  record TurnPiece(String pieceId, Angle turn) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.layerOf(pieceId).isPresent() && !plan.isHeld(pieceId);
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      Placement was = plan.placement(pieceId).orElseThrow();
      return Edit.moved(plan, pieceId, was.at(), turn);
    }
  }

  /** A piece goes, with its pile, from its layer to another. */
  record SendToLayer(String layerId, Placement place) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      Optional<Layer> from = plan.layerOf(place.pieceId());
      return from.filter(layer -> !layer.id().equals(layerId)).isPresent()
          && !plan.isHeld(place.pieceId())
          && isOpen(plan, layerId);
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      Load load = plan.load();
      WorkPlan sent = plan;
      for (Placement one : plan.pile(place.pieceId()).pieces()) {
        load = Placing.put(load, layerId, one.movedTo(place.at(), place.turn()));
        sent = sent.pinning(one.pieceId(), true);
      }
      return sent.with(load);
    }
  }

  /** A piece that waits goes in. */
  record PutIn(String layerId, Placement place) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.waiting(place.pieceId()).isPresent() && isOpen(plan, layerId);
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      return plan.with(Placing.put(plan.load(), layerId, place)).pinning(place.pieceId(), true);
    }
  }

  /**
   * A piece comes out and waits, with all of its pile.
   *
   * @param reason with its words
   */
  record TakeOut(LeftOut reason) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.layerOf(reason.pieceId()).isPresent() && !plan.isHeld(reason.pieceId());
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      Load load = plan.load();
      for (Placement one : plan.pile(reason.pieceId()).pieces()) {
        load =
            Placing.out(
                load,
                new LeftOut(one.pieceId(), reason.reason(), reason.sentence(), reason.mend()));
      }
      return plan.with(load);
    }
  }

  /** A piece is held, with its pile, where it stands, or let go. */
  record PinPiece(String pieceId, boolean hold) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.layerOf(pieceId).isPresent() && plan.isPinned(pieceId) != hold;
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      WorkPlan pinned = plan;
      for (Placement one : plan.pile(pieceId).pieces()) {
        pinned = pinned.pinning(one.pieceId(), hold);
      }
      return pinned;
    }
  }

  /** Everything pinned is let go. */
  record UnpinAll() implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return !plan.pinned().isEmpty();
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      return new WorkPlan(plan.load(), WorkPlan.of(plan.load()).pinned(), plan.locked());
    }
  }

  /** A whole layer is held as it is, or let go. */
  record LockLayer(String layerId, boolean hold) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.load().layer(layerId).isPresent() && plan.isLocked(layerId) != hold;
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      return plan.locking(layerId, hold);
    }
  }

  /** All layers are held as they are, or all let go. */
  record LockKiln(boolean hold) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return plan.load().layers().stream().anyMatch(layer -> plan.isLocked(layer.id()) != hold);
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      WorkPlan changed = plan;
      for (Layer layer : plan.load().layers()) {
        changed = changed.locking(layer.id(), hold);
      }
      return changed;
    }
  }

  /** Another plan of the same desk takes the place of this one; pins and locks stay. */
  record AdoptPlan(Load load) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return true;
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      SortedSet<String> locked = new TreeSet<>();
      for (Layer layer : plan.load().layers()) {
        if (plan.isLocked(layer.id())) {
          load.layers().stream()
              .filter(other -> isSame(layer, other))
              .forEach(other -> locked.add(other.id()));
        }
      }
      return new WorkPlan(load, plan.pinned(), locked);
    }

    /** Layers are counted anew in each plan; where they lie tells which is which. */
    private static boolean isSame(Layer one, Layer other) {
      return one.columnId().equals(other.columnId())
          && one.level() == other.level()
          && one.place() == other.place();
    }
  }

  /** A remedy for a waiting piece is taken: the load it leads to takes the place of this one. */
  record TakeRemedy(Load load) implements Edit {
    @Override
    public boolean fits(WorkPlan plan) {
      return !load.equals(plan.load());
    }

    @Override
    public WorkPlan changed(WorkPlan plan) {
      return new AdoptPlan(load).changed(plan);
    }
  }

  private static WorkPlan moved(WorkPlan plan, String pieceId, Point to, Angle turn) {
    WorkPlan moved = plan;
    for (Placement one : plan.pile(pieceId).pieces()) {
      moved =
          moved
              .with(Placing.moved(moved.load(), one.movedTo(to, turn)))
              .pinning(one.pieceId(), true);
    }
    return moved;
  }

  private static boolean isOpen(WorkPlan plan, String layerId) {
    return plan.load().layer(layerId).isPresent() && !plan.isLocked(layerId);
  }
}
