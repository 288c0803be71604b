package shelfful.packing;

import java.util.List;

/** The packer's own exact check, for settings that come from elsewhere. */
public final class SettingCheck {
  private SettingCheck() {}

  /**
   * The least of gap minus required clearance, in millimetres; negative when a clearance is not
   * kept.
   */
  public static double spare(ShelfQuestion question, List<Placed> bodies) {
    return Spare.of(question, bodies);
  }
}
