package shelfful.ui.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import shelfful.app.RecoveryFolder;
import shelfful.app.SearchLength;
import shelfful.drawing.Spot;
import shelfful.load.Placement;
import shelfful.measure.Point;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.shelfview.ShelfView;
import shelfful.ui.shelfview.ShelfViewport;
import shelfful.ui.task.SameThreadTaskRunner;
import shelfful.ui.task.TaskRunner;
import shelfful.ui.words.Words;

/** A desk in a window, worked by mouse and keys as a potter would. */
final class OpenDesk {
  private static final int MOST_TABS = 200;

  final DeskViewModel model;
  final SetPlaces places = new SetPlaces();
  final RecoveryFolder recovery;
  DeskWindow window;
  Stage stage;

  private OpenDesk(TaskRunner tasks, SearchLength length, Path recoveryFolder) {
    recovery = new RecoveryFolder(recoveryFolder);
    model = new DeskViewModel(Words.english(), tasks, length, recovery);
  }

  /** Everything happens at once, on the screen's thread. */
  static OpenDesk atOnce(SearchLength length, Path recoveryFolder) {
    return open(new SameThreadTaskRunner(), length, recoveryFolder);
  }

  static OpenDesk open(TaskRunner tasks, SearchLength length, Path recoveryFolder) {
    OpenDesk desk = new OpenDesk(tasks, length, recoveryFolder);
    Screen.on(
        () -> {
          desk.window = new DeskWindow(Words.english(), desk.model, desk.places);
          desk.stage = new Stage();
          desk.stage.setScene(new Scene(desk.window, 1280, 780));
          desk.stage.show();
          return null;
        });
    return desk;
  }

  void close() {
    run(() -> stage.close());
  }

  /** Does something on the screen's thread, and lays the window out. */
  void run(Runnable step) {
    Screen.on(
        () -> {
          step.run();
          window.applyCss();
          window.layout();
          return null;
        });
  }

  ShelfView picture() {
    return all(ShelfView.class).get(0);
  }

  <N extends Node> List<N> all(Class<N> type) {
    return Scenes.all(window, type);
  }

  /** Where a piece stands. */
  Placement place(String pieceId) {
    return model.work().plan().get().orElseThrow().placement(pieceId).orElseThrow();
  }

  /** A place of the chamber as a place on the picture, in pixels. */
  double[] pixel(Point at) {
    Spot spot = model.shown().get().orElseThrow().view(model.layerId().get()).orElseThrow().at(at);
    ShelfViewport seen = picture().viewport().orElseThrow();
    return new double[] {seen.screenX(spot.x()), seen.screenY(spot.y())};
  }

  void press(double x, double y) {
    fire(MouseEvent.MOUSE_PRESSED, x, y, 1, false);
  }

  void drag(double x, double y, boolean shift) {
    fire(MouseEvent.MOUSE_DRAGGED, x, y, 1, shift);
  }

  void release(double x, double y) {
    fire(MouseEvent.MOUSE_RELEASED, x, y, 1, false);
  }

  void move(double x, double y) {
    fire(MouseEvent.MOUSE_MOVED, x, y, 0, false);
  }

  void click(double x, double y, int times) {
    fire(MouseEvent.MOUSE_PRESSED, x, y, times, false);
    fire(MouseEvent.MOUSE_RELEASED, x, y, times, false);
  }

  private void fire(EventType<MouseEvent> type, double x, double y, int clicks, boolean shift) {
    run(
        () -> {
          Point2D scene = picture().localToScene(x, y);
          MouseEvent event =
              new MouseEvent(
                  type,
                  scene.getX(),
                  scene.getY(),
                  scene.getX(),
                  scene.getY(),
                  MouseButton.PRIMARY,
                  clicks,
                  shift,
                  false,
                  false,
                  false,
                  true,
                  false,
                  false,
                  true,
                  false,
                  false,
                  null);
          Event.fireEvent(picture(), event);
        });
  }

  /** A key where the focus is. */
  void key(KeyCode code) {
    key(code, false, false);
  }

  void key(KeyCode code, boolean shift, boolean shortcut) {
    run(
        () -> {
          send(KeyEvent.KEY_PRESSED, code, shift, shortcut);
          send(KeyEvent.KEY_RELEASED, code, shift, shortcut);
        });
  }

  private void send(EventType<KeyEvent> type, KeyCode code, boolean shift, boolean shortcut) {
    Node target = stage.getScene().getFocusOwner();
    Event.fireEvent(
        target == null ? window : target,
        new KeyEvent(type, "", "", code, shift, shortcut, false, false));
  }

  /** Presses Tab until the focus is where it is wanted. */
  void tabTo(Predicate<Node> wanted) {
    for (int i = 0; i < MOST_TABS; i++) {
      Node focused = stage.getScene().getFocusOwner();
      if (focused != null && wanted.test(focused)) {
        return;
      }
      key(KeyCode.TAB);
    }
    throw new AssertionError("Tab never leads there");
  }
}
