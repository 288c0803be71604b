package shelfful.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shelfful.load.Layer;
import shelfful.load.Load;
import shelfful.load.Placement;
import shelfful.load.StandingPost;
import shelfful.measure.Length;
import shelfful.measure.Mass;
import shelfful.measure.Point;
import shelfful.studio.Clearances;
import shelfful.studio.Studio;
import shelfful.ware.Catcher;
import shelfful.ware.Glaze;
import shelfful.ware.KeptApart;

/**
 * Whether every figure is one that can be reckoned with: within a hundred metres and a thousand
 * tonnes, and no clearance below zero. A load that fails here is judged no further, so that
 * everywhere else sums and squares of lengths fit the numbers they are kept in.
 */
final class FigureCheck {
  /**
   * A hundred metres in micrometres: the square of twice a distance then fits a long with room to
   * spare.
   */
  private static final long LONGEST = 100_000_000L;

  /** A thousand tonnes in grams. */
  private static final long HEAVIEST = 1_000_000_000L;

  private final Findings findings;

  private FigureCheck(Findings findings) {
    this.findings = findings;
  }

  static void judge(Load load, Findings findings) {
    FigureCheck check = new FigureCheck(findings);
    Studio studio = load.request().studio();
    check.rules(studio);
    studio.forms().forEach(form -> check.all("form " + form.id(), FormFigures.lengths(form)));
    studio.forms().forEach(form -> check.masses("form " + form.id(), FormFigures.masses(form)));
    studio.kilns().forEach(kiln -> check.all("kiln " + kiln.id(), KilnFigures.lengths(kiln)));
    studio.shelves().forEach(shelf -> check.all("shelf " + shelf.id(), KilnFigures.lengths(shelf)));
    studio
        .posts()
        .forEach(post -> check.all("post " + post.id(), List.of(post.length(), post.across())));
    load.layers().forEach(check::layer);
    load.posts().forEach(check::post);
  }

  private void rules(Studio studio) {
    Clearances clearances = studio.rules().clearances();
    distances(
        "house rules",
        List.of(
            clearances.glazedToGlazed(),
            clearances.bisqueToBisque(),
            clearances.wareToPost(),
            clearances.wareToWall(),
            clearances.wareToKeepOut(),
            clearances.footToShelfEdge(),
            clearances.headroom(),
            clearances.underLid(),
            clearances.offFloor(),
            clearances.leastShelfToShelf()));
    for (Glaze glaze : studio.glazes()) {
      distances("glaze " + glaze.id(), glaze.gap().stream().toList());
    }
    for (KeptApart pair : studio.rules().keptApart()) {
      distances("glazes kept apart", pair.distance().stream().toList());
    }
    Catcher catcher = studio.rules().catcher();
    all("catcher", List.of(catcher.thickness(), catcher.margin()));
    masses("catcher", List.of(catcher.mass()));
  }

  private void layer(Layer layer) {
    List<Length> lengths = new ArrayList<>(List.of(layer.z()));
    for (Placement placement : layer.placements()) {
      lengths.addAll(of(placement.at()));
      lengths.add(placement.rest().lift());
    }
    all("layer " + layer.id(), lengths);
  }

  private void post(StandingPost post) {
    List<Length> lengths = new ArrayList<>(of(post.at()));
    lengths.add(post.base());
    all("a standing post", lengths);
  }

  static List<Length> of(Point point) {
    return List.of(point.x(), point.y());
  }

  private void distances(String where, List<Length> lengths) {
    all(where, lengths);
    if (lengths.stream().anyMatch(length -> length.micrometres() < 0)) {
      findings.add(
          Rule.FIGURE_BEYOND_REASON,
          String.format(
              Locale.ROOT, "A distance to keep is below 0 (%s). Make it 0 or more.", where));
    }
  }

  private void all(String where, List<Length> lengths) {
    for (Length length : lengths) {
      if (length.micrometres() > LONGEST || length.micrometres() < -LONGEST) {
        findings.add(
            Rule.FIGURE_BEYOND_REASON,
            String.format(
                Locale.ROOT,
                "%s is beyond a hundred metres (%s). Correct the figure.",
                length,
                where));
      }
    }
  }

  private void masses(String where, List<Mass> masses) {
    for (Mass mass : masses) {
      if (mass.grams() > HEAVIEST) {
        findings.add(
            Rule.FIGURE_BEYOND_REASON,
            String.format(
                Locale.ROOT,
                "%s is beyond a thousand tonnes (%s). Correct the figure.",
                Wording.mass(mass),
                where));
      }
    }
  }
}
