package shelfful.ui.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/**
 * The words that do not belong to one firing.
 *
 * @param day a day, said shorter and shorter
 * @param handsOn loading and unpacking
 * @param heating from switching on to the end of heating
 * @param cooling from then until it may be opened
 * @param outOfOrder a kiln that cannot be used
 */
public record CalendarWords(
    Function<LocalDate, List<String>> day,
    List<String> handsOn,
    List<String> heating,
    List<String> cooling,
    List<String> outOfOrder) {
  /** Takes its own copies. */
  public CalendarWords {
    handsOn = List.copyOf(handsOn);
    heating = List.copyOf(heating);
    cooling = List.copyOf(cooling);
    outOfOrder = List.copyOf(outOfOrder);
  }
}
