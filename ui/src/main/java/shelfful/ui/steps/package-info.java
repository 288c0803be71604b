/** Named steps over immutable values, to be taken back and done again. */
package shelfful.ui.steps;
