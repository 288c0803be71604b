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
 */
record Run(String subject, Method method, long seed, Load load, Figures figures, Effort effort) {}
