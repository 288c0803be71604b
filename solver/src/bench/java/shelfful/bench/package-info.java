/**
 * Measures whole loads: plans the demo lists and the sample loads from several seeds, has every
 * load inspected, and prints what came of it beside what simpler rules make of the same lists.
 *
 * <p>Times depend on the machine and on what else runs there; counts of pieces in runs ended by
 * steps do not.
 */
package shelfful.bench;
