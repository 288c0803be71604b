/**
 * Plane geometry of convex outlines: discs, capsules, ovals, the convex regions that hold them, and
 * the signed gap between them.
 *
 * <p>Units: millimetres and radians, angles anticlockwise, in any right-handed plane frame the
 * caller chooses. All values are plain doubles; every shape and region is immutable.
 *
 * <p>The whole package rests on one identity. A convex body is the intersection of its supporting
 * half-planes, so with the support function h(u) = max of u.p over the body (unit u):
 *
 * <ul>
 *   <li>the signed gap between bodies A and B is the greatest value over u of u.(cB - cA) - hA(u) -
 *       hB(-u), where each h is taken about the body's own centre: the distance when they are
 *       apart, minus the least shift that separates them when they overlap;
 *   <li>the signed gap from a body A inside a convex region K to its wall is the least value over u
 *       of hK(u) - hA(u).
 * </ul>
 *
 * <p>Any direction gives a lower bound on the first, so an inexact answer there errs towards
 * touching. Every outline here is an ellipse core (a point, a segment or an ellipse) grown by a
 * radius, which lets {@link shelfful.geometry.Contour} treat all three alike.
 */
package shelfful.geometry;
