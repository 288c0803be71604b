package shelfful.remedy;

import java.util.Optional;

/**
 * One kind of remedy that was looked for.
 *
 * @param kind what was tried
 * @param found the remedy, or empty when every try failed
 * @param tries how many loads were planned and judged for it; 0 where the tries for a cheaper kind
 *     told as much
 * @param why every try failed, where that is known; empty text otherwise
 */
public record Trial(RemedyKind kind, Optional<Remedy> found, int tries, String why) {}
