package shelfful.ui.figures;

/** What a page of figures is about. */
public enum Page {
  PIECES,
  FILL,
  COST,
  CAUSES
}
