package shelfful.learning;

/**
 * How the pieces of one cell came out.
 *
 * @param trait by what they belong together
 * @param cell its name, for instance {@code top, edge}
 * @param proportion flawed ones of those looked at
 * @param interval of the rate, by Wilson's score, at the level asked for
 * @param rest the same of the pieces it is compared with
 * @param verdict compared with the pieces of the same firings, allowing for how many cells were
 *     compared
 * @param chance how likely chance alone makes such a difference in any of the cells compared; 1
 *     where nothing was compared
 */
public record CellRate(
    Trait trait,
    String cell,
    Proportion proportion,
    Interval interval,
    Proportion rest,
    Verdict verdict,
    double chance) {}
