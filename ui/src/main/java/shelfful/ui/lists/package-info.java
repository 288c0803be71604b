/** What is in and what waits, in words. */
package shelfful.ui.lists;
