/** Tests of the work by hand, without a screen. */
package shelfful.edit;
