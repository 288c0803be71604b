package shelfful.record;

import shelfful.measure.Cone;

/**
 * What the witness cones at one place say.
 *
 * @param place as the potter calls it, for instance the name of the cone pack's keep-out
 * @param reached the hottest cone that bent there
 */
public record WitnessCone(String place, Cone reached) {}
