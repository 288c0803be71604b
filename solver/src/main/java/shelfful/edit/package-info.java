/**
 * Work on a plan by hand: a plan with its pins and locks, edits as values, a history that goes back
 * and forth to the byte, and a piece in the hand with the judge's own figures. Nothing here knows a
 * screen, a file or the planner.
 */
package shelfful.edit;
