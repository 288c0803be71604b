package shelfful.ware;

/** Where the lid of a lidded form is fired. */
public enum LidPlace {
  ON,
  BESIDE
}
