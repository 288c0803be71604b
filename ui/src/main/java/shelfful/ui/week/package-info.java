/**
 * The week in a window of its own: a calendar of firings with its lists, moved and frozen by hand,
 * planned around what is held in the background, with every step undone by name. What is shown was
 * inspected; one firing's load is handed to the desk to be looked at.
 */
package shelfful.ui.week;
