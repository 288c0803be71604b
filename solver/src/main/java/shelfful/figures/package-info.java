/**
 * Figures of past firings for the potter: series over time and counts by cause, as plain values.
 */
package shelfful.figures;
