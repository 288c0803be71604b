package shelfful.ui.studio;

import shelfful.studio.Studio;

/**
 * One change of a studio, for a history to take back and do again.
 *
 * @param name what was changed, in words
 * @param before the studio as it was
 * @param after the studio as it became
 */
public record StudioEdit(String name, Studio before, Studio after) {}
