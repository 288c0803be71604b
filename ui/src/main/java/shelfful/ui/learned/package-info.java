/**
 * What the records of firings show: rates with their uncertainty, a map of the kiln, and
 * suggestions that become wishes of a glaze only when they are accepted.
 */
package shelfful.ui.learned;
