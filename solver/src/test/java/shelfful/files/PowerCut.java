package shelfful.files;

/** Stands for the moment after which nothing more happens, not even tidying up. */
final class PowerCut extends Error {
  private static final long serialVersionUID = 1L;
}
