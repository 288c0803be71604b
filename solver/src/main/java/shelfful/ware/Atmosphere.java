package shelfful.ware;

/** What the air in the kiln does to the glaze. */
public enum Atmosphere {
  OXIDATION,
  REDUCTION
}
