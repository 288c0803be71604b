package shelfful.drawing;

import java.util.Optional;
import shelfful.measure.LengthUnit;

/**
 * What is asked of a set of sheets besides the load.
 *
 * @param format of every page
 * @param unit every length is written in
 * @param edition written at the foot of every page
 * @param program written on the cover
 * @param limit a sentence that says how near the load comes to what is possible, written beside the
 *     count; empty where that was not worked out
 */
public record Printing(
    SheetFormat format,
    LengthUnit unit,
    Edition edition,
    ProgramNote program,
    Optional<String> limit) {

  /** A printing that does not say how near the load comes to what is possible. */
  public Printing(SheetFormat format, LengthUnit unit, Edition edition, ProgramNote program) {
    this(format, unit, edition, program, Optional.empty());
  }

  /** Upright sheets that say nothing but what the load says. */
  public static Printing plain(PaperSize paper, LengthUnit unit) {
    return new Printing(SheetFormat.upright(paper), unit, Edition.UNSAID, ProgramNote.BLANK);
  }
}
