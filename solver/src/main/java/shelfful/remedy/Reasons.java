package shelfful.remedy;

import java.util.EnumSet;
import java.util.Set;
import shelfful.load.LeftOut.Reason;

/** Which reasons for waiting have to do with what. */
final class Reasons {
  /** The room, or what stands in it. */
  static final Set<Reason> ROOM =
      EnumSet.of(Reason.NO_ROOM, Reason.SET_WAITS, Reason.KEPT_APART, Reason.TAKEN_OUT);

  /** The size of the piece, the kiln or its furniture. */
  static final Set<Reason> SIZE =
      EnumSet.of(Reason.TOO_TALL, Reason.TOO_WIDE, Reason.TOO_HEAVY, Reason.NO_ZONE);

  private Reasons() {}

  static boolean isOfRoom(WaitingCase one) {
    return ROOM.contains(one.group().reason().reason());
  }

  static boolean isOfSize(WaitingCase one) {
    return SIZE.contains(one.group().reason().reason());
  }
}
