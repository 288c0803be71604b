/**
 * How the desk looks and speaks: language, unit, number style, paper, light or dark, size of
 * letters; and the file these settings are kept in.
 */
package shelfful.ui.look;
