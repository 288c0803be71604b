/**
 * The judge of finished weeks: re-derives every time, way and figure from what was asked and the
 * plan alone, and has every load inspected. It shares no code with the planner of weeks.
 */
package shelfful.review;
