package shelfful.planning;

/** The one allowance between the packer's doubles and the whole micrometres of a plan. */
final class Margin {
  /**
   * Millimetres added to every clearance asked of the packer. Writing a place to a micrometre and a
   * turn to a thousandth of a degree moves the far end of a 300 mm dish by less than 4 µm, and two
   * pieces may each move.
   */
  static final double FOR_ROUNDING = 0.01;

  private Margin() {}
}
