package shelfful.ui.look;

/** Dark letters on light ground, or the other way round. */
public enum Theme {
  LIGHT,
  DARK
}
