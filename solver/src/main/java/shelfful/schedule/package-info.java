/**
 * Plans a run of firings: OptaPlanner shares ware out among turns of the kilns and says what each
 * turn fires, on estimates of room; then every firing's load is really planned through {@link
 * shelfful.schedule.LoadSource}, in the order of loading, and what did not go in flows on. Times
 * are whole minutes since the start of the week; room is in ten-thousandths of an estimated
 * kilnful.
 */
package shelfful.schedule;
