/**
 * Whole loads to measure planning by: invented studios with invented lists, each made from a fixed
 * seed. Sizes are usual ones of the trade (common practice, no source); nothing here is anybody's.
 */
package shelfful.sample;
