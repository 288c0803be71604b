package shelfful.kiln;

/** From where a kiln is loaded. */
public enum Loading {
  TOP,
  FRONT
}
