package shelfful.ui.desk;

import javafx.scene.input.KeyEvent;

/** The keys of work by hand, where the picture has the focus. */
final class HandKeys {
  /** Degrees of one turn by key or button. */
  static final double TURN = 15;

  private static final double FINE_TURN = 1;

  private final DeskCommands commands;

  HandKeys(DeskCommands commands) {
    this.commands = commands;
  }

  /** Does what a key stands for, and takes the event; others are left alone. */
  void pressed(KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown() || event.isMetaDown()) {
      return;
    }
    boolean shift = event.isShiftDown();
    switch (event.getCode()) {
      case LEFT -> commands.nudge(-1, 0, shift);
      case RIGHT -> commands.nudge(1, 0, shift);
      case UP -> commands.nudge(0, 1, shift);
      case DOWN -> commands.nudge(0, -1, shift);
      case OPEN_BRACKET, BRACELEFT -> commands.turn(shift ? FINE_TURN : TURN);
      case CLOSE_BRACKET, BRACERIGHT -> commands.turn(shift ? -FINE_TURN : -TURN);
      case PAGE_UP -> commands.toLayerAfter(1);
      case PAGE_DOWN -> commands.toLayerAfter(-1);
      case ENTER, SPACE -> commands.takeUpOrSetDown();
      case DELETE, BACK_SPACE -> commands.takeOut();
      case INSERT, I -> commands.putIn();
      case P -> commands.pin();
      case L -> commands.lock();
      case ESCAPE -> commands.escape();
      default -> {
        return;
      }
    }
    event.consume();
  }
}
