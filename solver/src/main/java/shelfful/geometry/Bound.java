package shelfful.geometry;

/** A closed convex set, one of those whose intersection makes a {@link Region}. */
public sealed interface Bound permits HalfPlane, DiscBound, OvalBound {}
