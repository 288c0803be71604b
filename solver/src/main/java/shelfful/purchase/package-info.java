/**
 * What one more shelf, one more set of posts or a thinner shelf is worth, measured by planning the
 * same lists with and without it.
 */
package shelfful.purchase;
