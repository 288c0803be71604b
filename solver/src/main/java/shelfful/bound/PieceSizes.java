package shelfful.bound;

import java.util.Optional;
import shelfful.geometry.Capsule;
import shelfful.geometry.Shape;
import shelfful.packing.BodyKind;
import shelfful.packing.Part;
import shelfful.planning.WareOnOffer.Offer;

/**
 * One offer as the proofs see it, in millimetres.
 *
 * @param offer it is
 * @param growth by which each of its outlines is grown, so that grown outlines do not overlap
 * @param height from the shelf to its top, tolerance included, micrometres
 */
record PieceSizes(Offer offer, double growth, long height) {
  /** What the judge may read a distance too long by, and a little more. */
  static final double SLACK = 0.0025;

  static PieceSizes of(Offer offer) {
    double top = offer.body().parts().stream().mapToDouble(Part::to).max().orElseThrow();
    long height = Math.round((top + offer.body().tolerance()) * 1000);
    double growth = offer.body().tolerance() + offer.gap().millimetres() / 2 - SLACK;
    return new PieceSizes(offer, growth, height);
  }

  BodyKind body() {
    return offer.body();
  }

  /** Half the gap it asks for. */
  double halfGap() {
    return offer.gap().millimetres() / 2;
  }

  /** The outline about its axis with the largest inner radius at a height, if it is so high. */
  Optional<Shape> sectionAt(double height) {
    Shape best = null;
    for (Part part : body().parts()) {
      boolean there = part.from() <= height && height < part.to();
      boolean central = part.shape().centreX() == 0 && part.shape().centreY() == 0;
      if (there && central && (best == null || isLarger(part.shape(), best))) {
        best = part.shape();
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isLarger(Shape one, Shape other) {
    return one.innerRadius() > other.innerRadius();
  }

  /** How far inside a shelf its axis stays, tolerance included, clearance not. */
  double footInside() {
    return body().foot().innerRadius() + body().tolerance() - SLACK;
  }

  /** How far inside a room that holds its whole body its axis stays, clearance not counted. */
  double bodyInside() {
    double inner = 0;
    for (Part part : body().parts()) {
      boolean central = part.shape().centreX() == 0 && part.shape().centreY() == 0;
      if (central) {
        inner = Math.max(inner, part.shape().innerRadius());
      }
    }
    return inner + body().tolerance() - SLACK;
  }

  /** A radius about the axis that every part covers. */
  double thinnest() {
    double least = Double.POSITIVE_INFINITY;
    for (Part part : body().parts()) {
      double off = Math.hypot(part.shape().centreX(), part.shape().centreY());
      boolean about = off == 0 || part.shape() instanceof Capsule;
      least = Math.min(least, about ? part.shape().innerRadius() : 0);
    }
    return least;
  }
}
