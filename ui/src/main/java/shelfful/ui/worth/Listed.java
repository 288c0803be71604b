package shelfful.ui.worth;

import shelfful.load.LoadRequest;

/**
 * A list that purchases are measured on.
 *
 * @param name as it is called on the screen
 * @param request its firing
 */
public record Listed(String name, LoadRequest request) {}
