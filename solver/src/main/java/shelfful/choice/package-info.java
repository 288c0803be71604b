/**
 * Which layers to take, of those known to fit: a choice without geometry and without rules of
 * glaze. Known layers are contents by kind of ware; heights add up within a column; no kind is used
 * more often than it exists. A walk from load to load chooses whole loads; prices by Lagrangian
 * relaxation say which new layers to look for.
 */
package shelfful.choice;
