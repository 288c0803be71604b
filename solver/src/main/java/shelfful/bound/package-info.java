/**
 * What no load can exceed: a proven limit of the pieces and of the worth that a kiln can hold of a
 * list, so that a plan can say how near it comes. Plain doubles in millimetres and radians inside a
 * level, whole micrometres for heights. Nothing here is a plan; nothing here looks at one.
 */
package shelfful.bound;
