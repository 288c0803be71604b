package shelfful.planning;

import java.util.Optional;
import shelfful.packing.BodyKind;
import shelfful.ware.StandingWare;

/**
 * Ware that is the same to the shelf: one outline by height, one gap class. Several lots may be of
 * one kind.
 *
 * @param index among the kinds of a request
 * @param ware as it stands in this firing
 * @param glazeId when the glaze's own gap or a distance rule makes it differ from others of the
 *     same shape
 * @param body the same for {@code packing}
 * @param area of the widest outline in the plan, in square millimetres, lugs included
 */
record WareKind(
    int index, StandingWare ware, Optional<String> glazeId, BodyKind body, double area) {}
