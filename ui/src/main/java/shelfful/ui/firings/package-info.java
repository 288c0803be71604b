/**
 * Firings as they were: what stood in them, how they went, and how each piece came out. What is
 * marked is kept at once; nothing that a plan says is typed again.
 */
package shelfful.ui.firings;
