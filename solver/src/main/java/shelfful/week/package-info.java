/**
 * A run of firings over days: what is asked (ware with its dates, kilns with their calendars and
 * programs) and the finished answer. Times are local times of the studio, to the minute; no time
 * zone is kept. Nothing here plans or judges.
 */
package shelfful.week;
