/** Work by hand: one piece at a time is taken up, carried, turned and set down. */
package shelfful.ui.hand;
