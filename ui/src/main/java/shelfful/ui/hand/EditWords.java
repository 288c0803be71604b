package shelfful.ui.hand;

import shelfful.edit.Edit;
import shelfful.ui.words.Words;

/** What the steps of a plan are called. */
public record EditWords(Words words) {

  /** The name of a step, with the piece or layer it is about. */
  public String of(Edit edit) {
    return words.of("edit." + edit.getClass().getSimpleName(), about(edit)).strip();
  }

  private static String about(Edit edit) {
    if (edit instanceof Edit.MovePiece one) {
      return one.pieceId();
    } else if (edit instanceof Edit.TurnPiece one) {
      return one.pieceId();
    } else if (edit instanceof Edit.SendToLayer one) {
      return one.place().pieceId() + " → " + one.layerId();
    } else if (edit instanceof Edit.PutIn one) {
      return one.place().pieceId() + " → " + one.layerId();
    } else if (edit instanceof Edit.TakeOut one) {
      return one.reason().pieceId();
    } else if (edit instanceof Edit.PinPiece one) {
      return one.pieceId();
    } else if (edit instanceof Edit.LockLayer one) {
      return one.layerId();
    }
    return "";
  }
}
