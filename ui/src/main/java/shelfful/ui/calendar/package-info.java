/**
 * A run of firings as a drawing: kilns as rows, time across. It is given finished words and times
 * and knows nothing of planning. Pixels are those of the screen, from the top left; sizes are in em
 * where they must grow with the letters.
 */
package shelfful.ui.calendar;
