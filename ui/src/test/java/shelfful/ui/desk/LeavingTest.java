package shelfful.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.DialogPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import shelfful.ui.Scenes;
import shelfful.ui.Screen;
import shelfful.ui.words.Words;

class LeavingTest {
  private final SetPlaces places = new SetPlaces();
  private final List<String> done = new ArrayList<>();
  private final List<String> unsaved = new ArrayList<>();
  private final Leaving leaving = new Leaving(Words.english(), places, document("the plan"));

  private Leaving.Document document(String name) {
    return new Leaving.Document(
        name,
        () -> unsaved.contains(name),
        () -> {
          done.add("save " + name);
          return unsaved.remove(name);
        },
        () -> done.add("drop " + name));
  }

  @Test
  void asksNothingWhileEverythingIsSaved() {
    leaving.plan(() -> done.add("next"));
    assertThat(done).containsExactly("next");
    assertThat(places.asked).isEmpty();
  }

  @Test
  void goingBackLeavesEverythingAsItIs() {
    unsaved.add("the plan");
    places.answer = Places.Answer.STAY;
    leaving.plan(() -> done.add("next"));
    assertThat(leaving.toOpen()).isEmpty();
    assertThat(leaving.mayClose()).isFalse();
    assertThat(done).isEmpty();
    assertThat(places.asked).hasSize(3).allMatch(sentence -> sentence.contains("the plan"));
  }

  @Test
  void savingGoesOnOnlyWhenItIsSaved() {
    unsaved.add("the plan");
    places.answer = Places.Answer.SAVE;
    leaving.plan(() -> done.add("next"));
    assertThat(done).containsExactly("save the plan", "next");
    leaving.watch(new Leaving.Document("a list", () -> true, () -> false, () -> done.add("lost")));
    assertThat(leaving.mayClose()).isFalse();
    assertThat(done).doesNotContain("lost");
  }

  @Test
  void closingAsksOnceForAllAndForgetsWhatIsNotSaved() {
    leaving.watch(document("the studio"));
    leaving.watch(document("the list"));
    unsaved.addAll(List.of("the plan", "the list"));
    places.answer = Places.Answer.LEAVE;
    assertThat(leaving.mayClose()).isTrue();
    assertThat(places.asked)
        .singleElement()
        .asString()
        .contains("the plan, the list")
        .doesNotContain("the studio");
    assertThat(done).containsExactly("drop the plan", "drop the studio", "drop the list");
  }

  /** Presses a key in the question's own window once it is there. */
  private static void press(KeyCode code) {
    Platform.runLater(
        () -> {
          DialogPane pane = question().orElseThrow();
          Node focused = pane.getScene().getFocusOwner();
          for (var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            Node target = focused == null ? pane : focused;
            target.fireEvent(new KeyEvent(type, "", "", code, false, false, false, false));
          }
        });
  }

  private static Optional<DialogPane> question() {
    return Window.getWindows().stream()
        .map(window -> window.getScene().getRoot())
        .filter(DialogPane.class::isInstance)
        .map(DialogPane.class::cast)
        .findFirst();
  }

  private static Places.Answer asked(KeyCode... keys) {
    return Screen.on(
        () -> {
          Stage owner = new Stage();
          owner.setScene(new Scene(new Pane(), 300, 200));
          owner.show();
          for (KeyCode key : keys) {
            press(key);
          }
          Places.Answer answer =
              new LeaveQuestion(Words.english(), owner, "Not saved yet: a plan.").answer();
          owner.close();
          return answer;
        });
  }

  @Test
  void theQuestionIsAnsweredByKeysAlone() {
    assertThat(asked(KeyCode.ENTER)).isEqualTo(Places.Answer.SAVE);
    assertThat(asked(KeyCode.ESCAPE)).isEqualTo(Places.Answer.STAY);
    assertThat(asked(KeyCode.TAB, KeyCode.TAB, KeyCode.ENTER)).isEqualTo(Places.Answer.LEAVE);
  }

  @Test
  void everyAnswerOfTheQuestionHasItsOwnWords() {
    List<String> answers = new ArrayList<>();
    Screen.on(
        () -> {
          Stage owner = new Stage();
          owner.setScene(new Scene(new Pane(), 300, 200));
          owner.show();
          Platform.runLater(
              () ->
                  Scenes.all(question().orElseThrow(), Button.class)
                      .forEach(button -> answers.add(button.getText())));
          press(KeyCode.ESCAPE);
          new LeaveQuestion(Words.english(), owner, "Not saved yet: a plan.").answer();
          owner.close();
          return null;
        });
    assertThat(answers).containsExactlyInAnyOrder("Save", "Do not save", "Go back");
  }
}
