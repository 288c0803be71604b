package shelfful.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shelfful.fixture.Forms;
import shelfful.measure.Angle;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.ware.Band;
import shelfful.ware.Form;
import shelfful.ware.Lid;
import shelfful.ware.Lug;
import shelfful.ware.Outline;
import shelfful.ware.Profile;
import shelfful.ware.Shrinkage;
import shelfful.ware.Stage;

/**
 * The forms of a studio, bisque sizes in millimetres. Studios make the same things a little larger
 * or smaller.
 */
final class SampleForms {
  private final double size;

  /**
   * Everything so many times as large as drawn, masses left as they are.
   *
   * @param size about 1
   */
  SampleForms(double size) {
    this.size = size;
  }

  List<Form> all() {
    return List.of(
        form("cup", 0.13, upright(round(40), round(64), 62)),
        form("mug", 0.36, upright(round(62), round(84), 96, handle(72, 16, 18, 80))),
        form("tumbler", 0.3, upright(round(58), round(80), 112)),
        form("bowl", 0.42, flared(68, step(84, 20), step(122, 42), step(152, 66))),
        form("big-bowl", 1.1, flared(100, step(124, 24), step(188, 56), step(236, 92))),
        form("side-plate", 0.4, flared(118, step(130, 8), step(180, 21))),
        form("plate", 0.85, flared(172, step(190, 9), step(266, 26))),
        form("oval-dish", 0.55, upright(oval(142, 88), oval(196, 128), 46)),
        form("platter", 1.2, upright(oval(204, 120), oval(280, 172), 40)),
        jar(),
        form("bud-vase", 0.35, flared(56, step(82, 90), step(40, 150))),
        form("bottle", 0.6, flared(66, step(88, 130), step(40, 225))),
        form("vase", 1.5, flared(92, step(128, 200), step(84, 290))),
        form("planter", 1.4, flared(130, step(150, 60), step(176, 140))),
        form("big-planter", 3.2, flared(190, step(215, 90), step(250, 210))),
        jug());
  }

  private Form jar() {
    Form pot = form("jar", 0.65, upright(round(84), round(114), 120));
    Lid lid = new Lid(round(108), mm(36), mm(28), Mass.ofKilograms(0.15));
    return Forms.withLid(pot, lid);
  }

  private Form jug() {
    Lug handle = handle(84, 18, 30, 110);
    Lug spout = new Lug("spout", Angle.ofDegrees(180), mm(68), mm(26), mm(100), mm(130));
    return form("jug", 0.6, upright(round(76), round(100), 130, handle, spout));
  }

  private static Form form(String id, double kilograms, Profile profile) {
    return new Form(
        id,
        id,
        Stage.BISQUE,
        Shrinkage.NONE,
        profile,
        Optional.empty(),
        Mass.ofKilograms(kilograms),
        Length.ofMillimetres(1),
        Length.ofMillimetres(5));
  }

  private Profile upright(Outline foot, Outline body, double height, Lug... lugs) {
    return Profile.upright(foot, body, mm(height), List.of(lugs));
  }

  /** A diameter up to a height, from where the step below it ends. */
  private record Step(double diameter, double to) {}

  private static Step step(double diameter, double to) {
    return new Step(diameter, to);
  }

  private Profile flared(double foot, Step... steps) {
    List<Band> bands = new ArrayList<>();
    Length from = Length.ZERO;
    for (Step step : steps) {
      bands.add(new Band(round(step.diameter()), from, mm(step.to())));
      from = mm(step.to());
    }
    return new Profile(round(foot), from, bands, List.of());
  }

  private Lug handle(double reach, double width, double from, double to) {
    return new Lug("handle", Angle.ZERO, mm(reach), mm(width), mm(from), mm(to));
  }

  private Outline round(double diameter) {
    return new Outline.Round(mm(diameter));
  }

  private Outline oval(double width, double depth) {
    return new Outline.Oval(mm(width), mm(depth));
  }

  private Length mm(double drawn) {
    return Length.ofMillimetres(drawn * size);
  }
}
