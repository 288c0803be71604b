package shelfful.schedule;

import java.util.List;
import shelfful.ware.FiringKind;

/**
 * What goes in together and cannot be told from others in one firing: one piece, or the pieces of
 * one set.
 *
 * @param index among all kinds of a week
 * @param kind of firing it is for
 * @param parts its pieces
 */
record UnitKind(int index, FiringKind kind, List<PartSpec> parts) {
  UnitKind {
    parts = List.copyOf(parts);
  }
}
