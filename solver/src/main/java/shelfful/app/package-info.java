/**
 * The use cases, once for the command line and the desk: open, plan, inspect, save, draw. A load
 * leaves here only inspected.
 */
package shelfful.app;
