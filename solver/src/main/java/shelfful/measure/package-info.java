/**
 * Lengths, masses, temperatures and cones, and how people write them.
 *
 * <p>A length is a whole number of micrometres, so that sums, comparisons and files are exact;
 * every other package of the domain speaks in these types and never in bare numbers.
 */
package shelfful.measure;
