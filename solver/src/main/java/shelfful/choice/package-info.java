/**
 * Which layers to take, of those known to fit: a small exact choice without geometry and without
 * rules of glaze. Known layers are contents by kind of ware; heights add up within a column; no
 * kind is used more often than it exists. Prices by Lagrangian relaxation guide a branch and bound.
 */
package shelfful.choice;
