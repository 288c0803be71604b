package shelfful.ware;

/**
 * A third of the kiln's height. A layer lies in the zone that the middle of its clear height lies
 * in; see {@code load.Layer}.
 */
public enum Zone {
  BOTTOM,
  MIDDLE,
  TOP
}
