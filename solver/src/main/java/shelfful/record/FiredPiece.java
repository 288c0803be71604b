package shelfful.record;

import java.util.Optional;
import shelfful.ware.Zone;

/**
 * A piece as it stood in a firing.
 *
 * @param pieceId unique within the firing
 * @param formId the form
 * @param glazeId the glaze, or empty for ware without one
 * @param layerId the layer it stood on
 * @param zone the third of the kiln's height
 * @param ring how far out it stood
 */
public record FiredPiece(
    String pieceId,
    String formId,
    Optional<String> glazeId,
    String layerId,
    Zone zone,
    Ring ring) {}
