package shelfful.bench;

import java.util.OptionalLong;
import shelfful.planning.PlanningWork;

/**
 * What a load took.
 *
 * @param firstMillis until the first load was there; empty where there is no search
 * @param nearMillis until a load within 1 % of the last one's worth was there
 * @param millis in all
 * @param work asked of the packer
 * @param heapMegabytes most memory in use at any moment, garbage included
 */
record Effort(
    OptionalLong firstMillis,
    OptionalLong nearMillis,
    long millis,
    PlanningWork work,
    long heapMegabytes) {}
