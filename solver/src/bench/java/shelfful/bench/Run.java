package shelfful.bench;

import shelfful.load.Load;

/**
 * One load made by one method.
 *
 * @param subject name of what was planned
 * @param method that made it
 * @param seed of the search; 0 where there is no chance in it
 * @param load that passed the inspector
 * @param figures of it
 * @param effort it took
 * @param isProven whether it is known to be the best that its method can make; always true where a
 *     method does not claim to make the best
 */
record Run(
    String subject,
    Method method,
    long seed,
    Load load,
    Figures figures,
    Effort effort,
    boolean isProven) {}
