package shelfful.ui.studio;

import java.util.Optional;
import java.util.function.UnaryOperator;
import shelfful.app.KeepAStudio;
import shelfful.studio.Studio;
import shelfful.ui.steps.Steps;

/**
 * Changes a studio from outside its pages, as one step like any other.
 *
 * @param model of the studio
 */
public record OutsideChange(StudioViewModel model) {

  /**
   * Does a change.
   *
   * @param name of the step
   * @return why it was not done: its file could not be read back; empty when it was
   */
  public Optional<String> take(String name, UnaryOperator<Studio> change) {
    Studio before = model.studio().get();
    Studio after = change.apply(before);
    KeepAStudio.Judgement judgement = KeepAStudio.judge(after);
    if (!judgement.sound()) {
      return judgement.faults().stream()
          .findFirst()
          .map(fault -> (fault.wrong() + " " + fault.mend()).strip());
    }
    model.show(after);
    model
        .steps()
        .note(new Steps.Step(model, name, () -> model.show(before), () -> model.show(after)));
    return Optional.empty();
  }
}
