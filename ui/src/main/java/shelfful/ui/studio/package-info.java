/**
 * What a potter owns and decides, page by page, to be changed in place.
 *
 * <p>Every change turns one immutable studio into another and is a named edit. A page is groups of
 * fields; a field knows how its value is shown in the user's unit and what studio comes of a text
 * typed into it. A studio that could not be read back from its file is never taken.
 */
package shelfful.ui.studio;
