/** What would be worth buying, measured by planning the same lists with and without it. */
package shelfful.ui.worth;
