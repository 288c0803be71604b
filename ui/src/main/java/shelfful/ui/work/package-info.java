/** The plan on the desk: what was done to it, where it is saved, and what is kept of it unasked. */
package shelfful.ui.work;
