/** Everything done at the desk, in one order, to be taken back and done again. */
package shelfful.ui.steps;
