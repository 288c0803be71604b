/** Figures of past firings: each drawn, with a table beside it that holds the same numbers. */
package shelfful.ui.figures;
