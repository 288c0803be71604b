package shelfful.ui.desk;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.LengthUnit;
import shelfful.measure.Point;
import shelfful.ui.hand.HandViewModel;
import shelfful.ui.words.Words;

/** What menus, buttons and keys do to the chosen piece and layer. */
final class DeskCommands {
  private static final int LARGE = 10;
  private static final int LARGE_IN_SIXTEENTHS = 8;

  private final Words words;
  private final DeskViewModel desk;
  private final HandViewModel hand;

  DeskCommands(Words words, DeskViewModel desk) {
    this.words = words;
    this.desk = desk;
    this.hand = desk.hand();
  }

  private String piece() {
    return desk.pieceId().get();
  }

  /** Has the chosen piece in the hand, taking it up where it stands; false when that cannot be. */
  private boolean holds() {
    if (hand.held().get().isPresent()) {
      return true;
    }
    String wanted = piece();
    desk.settle();
    return hand.takeUp(wanted);
  }

  /** Takes the chosen piece up, or sets down what is in the hand. */
  void takeUpOrSetDown() {
    if (!hand.setDown()) {
      if (waits()) {
        putIn();
      } else if (holds()) {
        hand.followPointer(true);
      } else {
        tellWhyNot();
      }
    }
  }

  /** Moves the chosen piece by a step to the right and away from the loader. */
  void nudge(int right, int away, boolean far) {
    if (holds()) {
      hand.nudge(step(right, far), step(away, far));
    } else {
      tellWhyNot();
    }
  }

  private Length step(int steps, boolean far) {
    boolean inches =
        desk.shown().get().filter(load -> load.unit() == LengthUnit.INCHES).isPresent();
    return inches
        ? Length.ofInches(steps * (far ? LARGE_IN_SIXTEENTHS : 1) / 16.0)
        : Length.ofMillimetres(steps * (far ? LARGE : 1));
  }

  /** Turns the chosen piece anticlockwise. */
  void turn(double degrees) {
    if (holds()) {
      hand.turn(degrees);
    } else {
      tellWhyNot();
    }
  }

  /** Carries the chosen piece to the layer that is loaded so many layers later. */
  void toLayerAfter(int steps) {
    if (holds()) {
      desk.chooseLayerAfter(steps);
    } else {
      tellWhyNot();
    }
  }

  private boolean waits() {
    return desk.work().plan().get().flatMap(plan -> plan.waiting(piece())).isPresent();
  }

  /** Takes the chosen piece, which waits, into the hand over the chosen layer. */
  void putIn() {
    String wanted = piece();
    desk.settle();
    Optional<String> layer = Optional.of(desk.layerId().get()).filter(id -> !id.isEmpty());
    if (layer.isPresent() && hand.takeIn(wanted, layer.get(), Point.ORIGIN)) {
      hand.followPointer(true);
    } else {
      tellWhyNot();
    }
  }

  /** Takes the chosen piece out. */
  void takeOut() {
    String wanted = piece();
    if (hand.held().get().isEmpty()) {
      desk.settle();
    }
    if (standing(wanted)) {
      desk.commands().takeOut(wanted);
    } else {
      tellWhyNot();
    }
  }

  private boolean standing(String pieceId) {
    return desk.work().plan().get().flatMap(plan -> plan.placement(pieceId)).isPresent();
  }

  void pin() {
    String wanted = piece();
    desk.settle();
    if (standing(wanted)) {
      desk.commands().pin(wanted);
    } else {
      tellWhyNot();
    }
  }

  void unpinAll() {
    desk.settle();
    desk.commands().unpinAll();
  }

  void lock() {
    desk.settle();
    desk.commands().lock(desk.layerId().get());
  }

  void lockKiln() {
    desk.settle();
    desk.commands().lockKiln();
  }

  void undo() {
    desk.settle();
    desk.commands().undo();
  }

  void redo() {
    desk.settle();
    desk.commands().redo();
  }

  /** Lets go of what is in the hand; with an empty hand, of the choice. */
  void escape() {
    if (hand.held().get().isPresent()) {
      hand.putBack();
    } else {
      desk.choosePiece("");
    }
  }

  private void tellWhyNot() {
    if (piece().isEmpty()) {
      hand.tell(words.of("hand.chooseFirst"));
    } else if (hand.told().get().isEmpty()) {
      hand.tell(words.of("hand.waits", piece()));
    }
  }
}
