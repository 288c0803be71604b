/** Tests of the bound of a whole load. */
package shelfful.bound;
