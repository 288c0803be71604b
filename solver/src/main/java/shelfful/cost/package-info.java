/**
 * Hours, energy and cost of firings: by the meter where it was read, else estimated from connected
 * power and program. What is not known is left empty, never guessed.
 */
package shelfful.cost;
