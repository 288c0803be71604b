/**
 * Sheets on the screen: the marks that the PDF is made of, painted on a canvas that is never larger
 * than what is seen of it. Paper lengths are millimetres, screen lengths are pixels.
 */
package shelfful.ui.shelfview;
