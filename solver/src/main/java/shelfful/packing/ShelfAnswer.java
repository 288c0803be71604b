package shelfful.packing;

/** The answer to a {@link ShelfQuestion}: a valid setting, or why there is none. */
public sealed interface ShelfAnswer permits Packed, DoesNotFit {}
