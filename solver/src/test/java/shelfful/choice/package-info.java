/** Checks the choice of layers against trying everything. */
package shelfful.choice;
