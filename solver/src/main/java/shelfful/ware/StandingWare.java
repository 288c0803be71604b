package shelfful.ware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.measure.Length;
import shelfful.measure.Mass;

/**
 * A piece as it stands on the shelf in one firing: at the size it goes in with, with its lid or
 * catcher. Heights are over the shelf.
 *
 * @param foot what stands on the shelf: the foot, or the catcher under it
 * @param height from the shelf to the highest point
 * @param bands outlines by height, lowest first, the catcher included
 * @param lugs what sticks out
 * @param mass with lid and catcher
 */
public record StandingWare(
    Outline foot, Length height, List<Band> bands, List<Lug> lugs, Mass mass) {
  /** Takes its own copies. */
  public StandingWare {
    bands = List.copyOf(bands);
    lugs = List.copyOf(lugs);
  }

  /**
   * The part of a form at the stage it goes in at, on a catcher if one is given.
   *
   * @throws IllegalArgumentException when the part needs a lid that the form does not have
   */
  public static StandingWare of(Form form, Part part, Stage goesIn, Optional<Catcher> catcher) {
    double factor = form.shrinkage().factor(form.measuredAt(), goesIn);
    StandingWare bare =
        switch (part) {
          case POT -> pot(form, factor);
          case POT_WITH_LID -> withLid(pot(form, factor), lidOf(form), factor);
          case LID -> lid(lidOf(form), factor);
        };
    return catcher.map(bare::on).orElse(bare);
  }

  private static Lid lidOf(Form form) {
    return form.lid()
        .orElseThrow(() -> new IllegalArgumentException("The form " + form.id() + " has no lid"));
  }

  private static StandingWare pot(Form form, double factor) {
    Profile profile = form.profile().scaledUp(factor);
    return new StandingWare(
        profile.foot(), profile.height(), profile.bands(), profile.lugs(), form.mass());
  }

  private static StandingWare withLid(StandingWare pot, Lid lid, double factor) {
    Length top = pot.height.plus(lid.rise().scaledUp(factor));
    List<Band> bands = new ArrayList<>(pot.bands);
    bands.add(new Band(lid.outline().scaledUp(factor), pot.height, top));
    return new StandingWare(pot.foot, top, bands, pot.lugs, pot.mass.plus(lid.mass()));
  }

  private static StandingWare lid(Lid lid, double factor) {
    Outline outline = lid.outline().scaledUp(factor);
    Length height = lid.height().scaledUp(factor);
    return new StandingWare(
        outline, height, List.of(new Band(outline, Length.ZERO, height)), List.of(), lid.mass());
  }

  private StandingWare on(Catcher catcher) {
    Outline disc = foot.wider(catcher.margin());
    Length lift = catcher.thickness();
    List<Band> raised = new ArrayList<>();
    raised.add(new Band(disc, Length.ZERO, lift));
    bands.forEach(band -> raised.add(band.raised(lift)));
    List<Lug> raisedLugs = lugs.stream().map(lug -> lug.raised(lift)).toList();
    return new StandingWare(disc, height.plus(lift), raised, raisedLugs, mass.plus(catcher.mass()));
  }

  /**
   * The same piece as it lies in a pile: turned over about its own x axis or not, and lifted.
   * Heights stay over the shelf, so the lowest band of a lifted piece begins at the lift. On the
   * shelf its rim is the foot of a piece turned over.
   *
   * @param lift of its lowest point over the shelf, not negative
   */
  public StandingWare lying(boolean upsideDown, Length lift) {
    StandingWare turned = upsideDown ? turnedOver() : this;
    if (lift.equals(Length.ZERO)) {
      return turned;
    }
    return new StandingWare(
        foot,
        height.plus(lift),
        turned.bands.stream().map(band -> band.raised(lift)).toList(),
        turned.lugs.stream().map(lug -> lug.raised(lift)).toList(),
        mass);
  }

  private StandingWare turnedOver() {
    List<Band> over = new ArrayList<>();
    for (Band band : bands) {
      over.add(0, new Band(band.outline(), height.minus(band.to()), height.minus(band.from())));
    }
    List<Lug> overLugs = lugs.stream().map(lug -> lug.turnedOver(height)).toList();
    return new StandingWare(over.get(0).outline(), height, over, overLugs, mass);
  }
}
