package shelfful.inspect;

import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.Zone;

/**
 * What the judge measured on one layer.
 *
 * @param layerId the layer
 * @param smallestGap the least distance between two pieces that share a height; empty with fewer
 *     than two
 * @param clearHeight from the top of the shelf to the lowest thing over it
 * @param mass of all that stands on the shelf
 * @param zone of the kiln it lies in
 */
public record LayerFigures(
    String layerId, Optional<Length> smallestGap, Length clearHeight, Mass mass, Zone zone) {}
