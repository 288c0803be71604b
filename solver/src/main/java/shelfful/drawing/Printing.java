package shelfful.drawing;

import shelfful.measure.LengthUnit;

/**
 * What is asked of a set of sheets besides the load.
 *
 * @param format of every page
 * @param unit every length is written in
 * @param edition written at the foot of every page
 * @param program written on the cover
 */
public record Printing(SheetFormat format, LengthUnit unit, Edition edition, ProgramNote program) {
  /** Upright sheets that say nothing but what the load says. */
  public static Printing plain(PaperSize paper, LengthUnit unit) {
    return new Printing(SheetFormat.upright(paper), unit, Edition.UNSAID, ProgramNote.BLANK);
  }
}
